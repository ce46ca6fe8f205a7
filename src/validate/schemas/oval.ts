import * as z from 'zod'
import { rails } from '../../model/oval-choices.ts'
import { entriesUnder } from '../imports/imports.ts'
import { factsUnder, group } from './facts-under.ts'
import { quantity } from './quantity.ts'
import { line } from './text.ts'

const mark = z.strictObject({
  kind: z.enum(['gate', 'drain', 'water', 'finish', 'stand', 'stockpile']),
  name: line,
  /** Along the rail from the start of the home straight, in the direction of travel. */
  station: quantity('mark.station').pipe(z.any()),
  side: z.enum(['rail', 'outside']).optional(),
  /**
   * Of a stockpile: the gate by which its material is hauled onto the track, by name; else the
   * nearest.
   */
  gate: line.optional(),
  /** Of a gate at the outside: machines come and go by it. */
  machines: z.boolean().optional(),
})

/** The shape of the oval, its width and slope, and what stands along it. */
export const oval = z.strictObject({
  ...factsUnder('oval'),
  ...entriesUnder('oval'),
  width: group('oval.width'),
  'cross-fall': group('oval.cross-fall'),
  pylons: group('oval.pylons'),
  rail: z.enum(rails).optional(),
  direction: z.enum(['counterclockwise', 'clockwise']).optional(),
  /**
   * Direction in which horses run on the home straight, degrees clockwise from true north: turns
   * the arrow on the plan.
   */
  'home-bearing': z
    .number()
    .min(0, { error: 'degrees clockwise from north, from 0 to 360' })
    .max(360, { error: 'degrees clockwise from north, from 0 to 360' })
    .optional(),
  marks: z.array(mark).optional(),
})

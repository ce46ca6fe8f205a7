import * as z from 'zod'
import { id, line, prose } from './text.ts'

const name = z
  .string()
  .regex(/^[a-z][a-zA-Z0-9-]*$/, { error: 'a name of the calculation, such as widthTurns' })

/** Words for both systems of units, or for each its own. */
const said = z.union([line, z.strictObject({ us: line, metric: line })])

/** What stands with a number: the same words for one and for more, or for each its own. */
const counted = z.union([line, z.strictObject({ one: line, other: line })])

/** The words of one calculation; names are those of its declaration. */
const calculation = z.strictObject({
  title: line,
  about: prose,
  inputs: z.record(name, counted).optional(),
  outputs: z.record(name, counted),
  refusals: z.record(id, line).optional(),
  terms: z.record(id, line).optional(),
  steps: z.record(id, line).optional(),
})

/** A worksheet of the manual: its number is never given to another, even when it is gone. */
const worksheet = z.strictObject({
  number: z.int().min(1, { error: 'a number from 1' }),
  title: said.optional(),
})

/** A file of content/worksheets: what worksheets of one subject say. */
export const worksheets = z.strictObject({
  worksheets: z.record(id, worksheet).optional(),
  calculations: z.record(id, calculation).optional(),
  reasons: z.record(id, said).optional(),
  'no-number': z.strictObject({ unknown: line, outside: line, any: line }).optional(),
})

export type WorksheetFile = z.output<typeof worksheets>

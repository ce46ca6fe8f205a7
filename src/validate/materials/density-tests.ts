import * as z from 'zod'
import type { DensityTest } from '../../model/material-tests.ts'
import { quantity } from '../schemas/quantity.ts'
import { date, line } from '../schemas/text.ts'

/** The entry of the facility file: density and moisture of the packed base at one place. */
export const densityEntry = z.strictObject({
  date,
  by: line,
  station: quantity('survey.station'),
  wet: quantity('density.wet'),
  moisture: quantity('density.moisture'),
})

/** The tests that have both numbers, in the order of the file. */
export const readDensityTests = (
  entries: readonly z.output<typeof densityEntry>[],
): readonly DensityTest[] =>
  entries.flatMap(({ wet, moisture }) =>
    wet && moisture ? [{ wet: wet.si, moisture: moisture.si }] : [],
  )

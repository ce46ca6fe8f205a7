import type { Refusal } from '../../../src/compute/calculation.ts'
import { noiseDose, permittedByRule, recommended } from '../../../src/compute/safety/noise.ts'
import { eightHourMean, silica } from '../../../src/compute/safety/silica.ts'
import { toUnit } from '../../../src/model/quantity/format-quantity.ts'
import { numberOf } from '../../compute/support/answers.ts'
import { type Inputs, type Runner, si } from '../case.ts'

/** Pairs of a level and hours. */
const segments = (x: Inputs): readonly (readonly [number, number])[] =>
  x.words('segments').map((w) => w.split(',').map(Number) as [number, number])

const hours = (seconds: number): number => toUnit(seconds, 'h')

function silicaLimits(): { PEL_ug_m3: number; action_level_ug_m3: number; averaging_h: number } {
  // A dust of 100 µg/m³ reaches a level after as many of the averaged hours as the level is of 100.
  const at = silica.compute({ dust: si(100, 'ug/m3') })
  const averaged = hours(1 / eightHourMean([{ dust: 1, time: 1 }]))
  const level = (time: number | Refusal | undefined): number =>
    Number(((hours(numberOf(time)) / averaged) * 100).toFixed(9))
  return { PEL_ug_m3: level(at.limit), action_level_ug_m3: level(at.action), averaging_h: averaged }
}

/** What is borne for part of a day. */
export const noiseAndDust: Readonly<Record<string, Runner>> = {
  silicaLimits,
  dustMean: (x) => ({
    value: toUnit(
      eightHourMean(
        segments(x).map(([dust, h]) => ({ dust: si(dust, 'ug/m3'), time: si(h, 'h') })),
      ),
      'ug/m3',
    ),
  }),
  noise: (x) => ({ value: hours(permittedByRule(x.n('L_dBA'))) }),
  noiseRecommended: (x) => ({ value: hours(recommended(x.n('L_dBA'))) }),
  dose: (x) => ({
    value:
      100 *
      noiseDose(
        segments(x).map(([level, h]) => ({ level, time: si(h, 'h') })),
        permittedByRule,
      ),
  }),
}

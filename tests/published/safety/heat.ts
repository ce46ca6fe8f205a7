import type { Refusal } from '../../../src/compute/calculation.ts'
import { drinkingWater } from '../../../src/compute/safety/drinking-water.ts'
import { heatShift } from '../../../src/compute/safety/heat-shift.ts'
import { heatRisk } from '../../../src/compute/weather/heat.ts'
import { toUnit } from '../../../src/model/quantity/format-quantity.ts'
import { numberOf } from '../../compute/support/answers.ts'
import { type Inputs, type Runner, si } from '../case.ts'

const risks = ['lower', 'moderate', 'high', 'very high']

const days = (x: Inputs) => heatShift.compute({ shift: x.si('shift_min', 'min') })
const minutes = (...values: (number | Refusal | undefined)[]): number[] =>
  values.map((v) => Number(toUnit(numberOf(v), 'min').toFixed(9)))

/** Ounces that one person drinks in an hour of cups at an interval, s. */
const ouncesAnHour = (every: number): number =>
  Number(
    toUnit(
      numberOf(drinkingWater.compute({ every, hours: si(1, 'h'), people: 1 }).crew),
      'floz',
    ).toFixed(9),
  )

export const heatAtWork: Readonly<Record<string, Runner>> = {
  risk: (x) => ({ value: risks[heatRisk(x.n('heat_index_F')) - 1] }),
  newcomer: (x) => {
    const { first, second, third, fourth, fifth } = days(x)
    return { value: minutes(first, second, third, fourth, fifth) }
  },
  returning: (x) => {
    const at = days(x)
    return {
      value: minutes(
        at.returning,
        at['returning-second'],
        at['returning-third'],
        at['returning-fourth'],
      ),
    }
  },
  cups: (x) => ({ value: x.list('every_min').map((every) => ouncesAnHour(si(every, 'min'))) }),
  mostWater: () => ({ value: ouncesAnHour(drinkingWater.inputs['every']?.range[0] ?? Number.NaN) }),
}

import { lifting } from '../../../src/compute/safety/lifting.ts'
import { truckOnBank } from '../../../src/compute/safety/truck-on-bank.ts'
import { toUnit } from '../../../src/model/quantity/format-quantity.ts'
import { numberOf } from '../../compute/support/answers.ts'
import { type Inputs, type Runner, si } from '../case.ts'
import { usual } from '../usual.ts'

const truck = { tank: 1, crossFall: 0.06, threshold: 0.35, radius: 69, offset: 1, pace: 1.5 }

const twistOf = (x: Inputs): number => x.si('A_deg', '°')

const lift = (x: Inputs, load: number) =>
  lifting.compute({
    reach: x.si('H_in', 'in'),
    height: x.si('V_in', 'in'),
    travel: x.si('D_in', 'in'),
    twist: twistOf(x),
    often: x.n('FM'),
    grip: x.n('CM'),
    load,
  })

/** The lift for which every factor but that of the twist is one. */
const idealLimit = (twist: number): number =>
  numberOf(
    lifting.compute({
      reach: si(10, 'in'),
      height: si(30, 'in'),
      travel: si(10, 'in'),
      often: 1,
      grip: 1,
      load: 1,
      twist,
    }).limit,
  )

/** What is lifted, and what tips over. */
export const loads: Readonly<Record<string, Runner>> = {
  lift: (x) => ({ value: toUnit(numberOf(lift(x, 1).limit), 'lb') }),
  liftIndex: (x) => ({ value: numberOf(lift(x, x.si('load_lb', 'lb')).index) }),
  twist: (x) => ({ value: idealLimit(twistOf(x)) / idealLimit(0) }),
  tank: (x) => ({
    value: toUnit(
      numberOf(truckOnBank.compute({ ...truck, tank: x.si('gal', 'gal') }).water),
      'lb',
    ),
  }),
  bankPull: (x) => ({
    value: numberOf(truckOnBank.compute({ ...truck, crossFall: x.n('e') }).pull),
  }),
  rollThreshold: () => ({ value: usual('practice.roll-threshold') }),
}

import { fieldCapacity } from '../../../src/compute/coverage/field-capacity.ts'
import { fuelUse, YEARLY_MEAN } from '../../../src/compute/money/fuel.ts'
import {
  implementDraft,
  pullPower,
  takeOffPower,
} from '../../../src/compute/money/pulling-power.ts'
import { balancedSpeed, sidePush, unbalancedPush } from '../../../src/compute/oval/curve-balance.ts'
import { toUnit } from '../../../src/model/quantity/format-quantity.ts'
import { type Inputs, type Runner, si } from '../case.ts'

/** The highway form rounds its constant to 15, which stands for a gravity of 32.27 ft/s². */
const HIGHWAY_GRAVITY = si(15 * (5280 / 3600) ** 2, 'ft')

const slope = (x: Inputs): number => Math.tan(x.si('deg', '°'))

export const curvesAndPower: Readonly<Record<string, Runner>> = {
  super_rate: (x) => ({
    e: Number(unbalancedPush(x.si('V', 'mph'), x.si('R', 'ft'), x.n('f'), HIGHWAY_GRAVITY)),
  }),
  ideal_angle: (x) => ({
    deg: toUnit(Math.atan(sidePush(x.n('v'), x.n('r'), x.n('g'))), '°'),
  }),
  ideal_speed: (x) => ({ v: balancedSpeed(slope(x), x.n('r'), x.n('g')) }),
  flat_friction: (x) => ({ mu: sidePush(x.n('v'), x.n('r'), x.n('g')) }),
  efc: (x) => ({
    acres_per_h: toUnit(
      fieldCapacity(x.si('speed', 'mph'), x.si('width', 'ft'), x.n('eff_pct') / 100),
      'acre/h',
    ),
  }),
  pto_hp: (x) => ({
    hp: toUnit(
      pullPower(
        implementDraft(x.si('width', 'ft'), x.si('draft', 'lbf/ft') * x.n('soil_factor')),
        x.si('speed', 'mph'),
      ),
      'hp',
    ),
  }),
  pto_from_drawbar: (x) => {
    const drawbar = pullPower(x.si('force', 'lbf'), x.si('speed', 'mph'))
    return { dbhp: toUnit(drawbar, 'hp'), pto: toUnit(takeOffPower(drawbar, x.n('te')), 'hp') }
  },
  drawbar_hp: (x) => ({ hp: toUnit(pullPower(x.si('force', 'lbf'), x.si('speed', 'mph')), 'hp') }),
  fuel_coeff_convert: () => ({ l_per_kwh: toUnit(YEARLY_MEAN * si(1, 'kW') * si(1, 'h'), 'L') }),
  fuel_avg: (x) => ({ gal_per_h: toUnit(fuelUse(x.si('pto_hp', 'hp')), 'gal/h') }),
}

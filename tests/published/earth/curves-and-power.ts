import { coverDistance, fieldCapacity } from '../../../src/compute/coverage/field-capacity.ts'
import { fuelMass, fuelUse, YEARLY_MEAN } from '../../../src/compute/money/fuel.ts'
import { drivingTime } from '../../../src/compute/money/hauling.ts'
import { jobTime } from '../../../src/compute/money/job-cost.ts'
import {
  implementDraft,
  pullPower,
  sectionDraft,
  takeOffPower,
} from '../../../src/compute/money/pulling-power.ts'
import {
  balancedRadius,
  balancedSpeed,
  sidePush,
  turningForce,
  unbalancedPush,
} from '../../../src/compute/oval/curve-balance.ts'
import { slopeAngle, slopeOf } from '../../../src/compute/survey/slope.ts'
import { toUnit } from '../../../src/model/quantity/format-quantity.ts'
import { type Inputs, type Runner, si } from './case.ts'

/** The highway form rounds its constant to 15, which stands for a gravity of 32.27 ft/s². */
const HIGHWAY_GRAVITY = si(15 * (5280 / 3600) ** 2, 'ft')

const slope = (x: Inputs): number => Math.tan(x.si('deg', '°'))
const capacity = (x: Inputs, efficiency: number): number =>
  fieldCapacity(x.si('speed', 'mph'), x.si('width', 'ft'), efficiency)
const perHorsepowerHour = (pounds: number): number => si(pounds, 'lb') / (si(1, 'hp') * si(1, 'h'))

export const curvesAndPower: Readonly<Record<string, Runner>> = {
  grade_pct: (x) => ({ pct: 100 * slopeOf(x.si('rise', 'in'), x.si('run', 'in')) }),
  slope_convert: (x) => ({
    degrees: toUnit(slopeAngle(x.n('pct') / 100), '°'),
    in_per_ft: (12 * x.n('pct')) / 100,
  }),
  super_radius: (x) => ({
    R: toUnit(balancedRadius(x.si('V', 'mph'), x.n('e') + x.n('f'), HIGHWAY_GRAVITY), 'ft'),
  }),
  super_rate: (x) => ({
    e: Number(unbalancedPush(x.si('V', 'mph'), x.si('R', 'ft'), x.n('f'), HIGHWAY_GRAVITY)),
  }),
  super_exact_constants: (x) => ({
    us: 1 / toUnit(balancedRadius(si(1, 'mph'), 1, x.si('g_ft', 'ft')), 'ft'),
    metric: 1 / balancedRadius(si(1, 'km/h'), 1, x.n('g_m')),
  }),
  centripetal_force: (x) => ({ F: turningForce(x.n('m'), x.n('v'), x.n('r')) }),
  ideal_angle: (x) => ({ deg: toUnit(slopeAngle(sidePush(x.n('v'), x.n('r'), x.n('g'))), '°') }),
  ideal_radius: (x) => {
    const r = balancedRadius(x.n('v'), slope(x), x.n('g'))
    const push = sidePush(x.n('v'), r, x.n('g'))
    return { r, a: push * x.n('g'), a_g: push }
  },
  ideal_speed: (x) => ({ v: balancedSpeed(slope(x), x.n('r'), x.n('g')) }),
  flat_friction: (x) => ({ mu: sidePush(x.n('v'), x.n('r'), x.n('g')) }),
  efc: (x) => ({ acres_per_h: toUnit(capacity(x, x.n('eff_pct') / 100), 'acre/h') }),
  efc_hours: (x) => {
    const rate = capacity(x, x.n('eff_pct') / 100)
    return {
      theoretical: toUnit(capacity(x, 1), 'acre/h'),
      acres_per_h: toUnit(rate, 'acre/h'),
      hours: toUnit(jobTime(x.si('acres', 'acre'), rate), 'h'),
    }
  },
  hours_per_acre: (x) => {
    const feet = toUnit(coverDistance(si(1, 'acre'), x.si('width', 'ft')), 'ft')
    // The worksheet rounds the mile to 0.000189 for each foot, so its own factor is used.
    const miles = feet * x.n('mile_per_foot')
    return { feet, miles, hours: toUnit(drivingTime(si(miles, 'mi'), x.si('speed', 'mph')), 'h') }
  },
  lb_1000sf_to_acre: (x) => ({
    lb_per_acre: toUnit(x.si('rate', 'lb') / si(1000, 'ft2'), 'lb/acre'),
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
  plow_draft: (x) => ({
    lb: toUnit(
      sectionDraft(
        x.si('width_in', 'in'),
        x.si('depth_in', 'in'),
        x.n('bottoms'),
        x.si('unit_draft', 'psi'),
      ),
      'lbf',
    ),
  }),
  fuel_coeff_convert: () => ({ l_per_kwh: toUnit(YEARLY_MEAN * si(1, 'kW') * si(1, 'h'), 'L') }),
  fuel_avg: (x) => ({ gal_per_h: toUnit(fuelUse(x.si('pto_hp', 'hp')), 'gal/h') }),
  fuel_bsfc: (x) => {
    const pounds = toUnit(fuelMass(x.si('hp', 'hp'), perHorsepowerHour(x.n('bsfc'))), 'lb/h')
    return { lb_per_h: pounds, gal_per_h: pounds / x.n('lb_per_gal') }
  },
}

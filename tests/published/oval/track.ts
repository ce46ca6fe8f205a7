import { balancedSpeed, sidePush, unbalancedPush } from '../../../src/compute/oval/curve-balance.ts'
import { onePoint } from '../../../src/compute/water/moisture.ts'
import { materials } from '../../../src/model/oval-choices.ts'
import { toUnit } from '../../../src/model/quantity/format-quantity.ts'
import { numberOf } from '../../compute/support/answers.ts'
import type { Answers, Inputs, Runner } from '../case.ts'
import { usual } from '../usual.ts'

const gravity = (x: Inputs): number => x.si('g_ft_s2', 'ft')
const path = (x: Inputs): number => x.si('r_ft', 'ft')
const inFeetAndMiles = (speed: number): Answers => ({
  ft_per_s: toUnit(speed, 'ft'),
  mph: toUnit(speed, 'mph'),
})

/** Horses in turns, and what stands in where a facility says nothing. */
export const track: Readonly<Record<string, Runner>> = {
  // A mile in two minutes is also the pace that stands in.
  race_pace: () => inFeetAndMiles(usual('oval.race-pace')),
  side_push: (x) => {
    const e = sidePush(x.si('v_ft_s', 'ft'), path(x), gravity(x))
    return { e, degrees: toUnit(Math.atan(e), '°') }
  },
  balanced_speed: (x) => inFeetAndMiles(balancedSpeed(x.n('e'), path(x), gravity(x))),
  side_force: (x) => ({
    value: numberOf(unbalancedPush(x.si('v_ft_s', 'ft'), path(x), x.n('e'), gravity(x))),
  }),
  measuring_offset: () => ({ offset_ft: toUnit(usual('oval.measuring-offset'), 'ft') }),
  survey_lines: () => ({ value: usual('practice.survey.lines') }),
  driving_depth: () => ({ driving_in: toUnit(usual('cushion.depth.target', 'clay'), 'in') }),
  moisture_within: (x) => {
    const percents = materials.map((m) => 100 * usual('cushion.moisture.target', m))
    const within = percents.every((p) => p >= x.n('min_pct') && p <= x.n('max_pct'))
    return { value: within ? 'within' : percents.join() }
  },
  point: (x) => ({
    value: toUnit(
      numberOf(
        onePoint.compute({
          area: x.si('area_ft2', 'ft2'),
          depth: x.si('depth_ft', 'ft'),
          weight: x.si('rho_lb_ft3', 'pcf'),
        }).water,
      ),
      'gal',
    ),
  }),
}

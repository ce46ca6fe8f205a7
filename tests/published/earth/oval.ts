import { layerDepth, layerVolume, waterToMoisten } from '../../../src/compute/materials/layer.ts'
import { moistureFromProbe } from '../../../src/compute/materials/phase-relations.ts'
import { jobTime } from '../../../src/compute/money/job-cost.ts'
import { balancedSpeed, sidePush, unbalancedPush } from '../../../src/compute/oval/curve-balance.ts'
import { edgeRise } from '../../../src/compute/oval/edge-rise.ts'
import { infieldArea } from '../../../src/compute/oval/infield-area.ts'
import { laneStagger } from '../../../src/compute/oval/lane-stagger.ts'
import { lapExtra } from '../../../src/compute/oval/lap-extra.ts'
import { pylonCount } from '../../../src/compute/oval/pylon-count.ts'
import { shapeFromLapAndStraight } from '../../../src/compute/oval/shape-from-lap-and-straight.ts'
import { shapeFromStraightAndRadius } from '../../../src/compute/oval/shape-from-straight-and-radius.ts'
import { stationCount } from '../../../src/compute/oval/station-count.ts'
import { trackArea } from '../../../src/compute/oval/track-area.ts'
import { turnLength } from '../../../src/compute/oval/turn-length.ts'
import { slopeAngle, slopeOf, slopeStretch } from '../../../src/compute/survey/slope.ts'
import { factSpec } from '../../../src/model/fact-spec.ts'
import type { Material } from '../../../src/model/oval-choices.ts'
import { lapLength } from '../../../src/model/oval-shape.ts'
import { toUnit } from '../../../src/model/quantity/format-quantity.ts'
import { parseQuantity } from '../../../src/model/quantity/parse-quantity.ts'
import { type Inputs, type Runner, si } from './case.ts'

const ft = (x: Inputs, name: string): number => x.si(`${name}_ft`, 'ft')
const area = (x: Inputs): number => x.si('area_ft2', 'ft2')

/** What stands in for a fact that a facility does not give, in SI. */
export function usual(path: string, material: Material = 'stone-dust'): number {
  const read = parseQuantity(factSpec(path)?.typical(material)?.us ?? '', { plain: true })
  return read.ok ? read.quantity.si : Number.NaN
}

const shapeOf = (
  x: Inputs,
): { measuredStraight: number; measuredRadius: number; offset: number } => ({
  measuredStraight: ft(x, 'S'),
  measuredRadius: ft(x, 'R'),
  offset: x.has('offset_ft') ? ft(x, 'offset') : 0,
})
const lap: Runner = (x) => ({
  value: toUnit(Number(shapeFromStraightAndRadius.compute(shapeOf(x)).lap), 'ft'),
})
const radius =
  (unit: 'ft' | 'm'): Runner =>
  (x) => {
    const given = (name: string): number => x.si(`${name}_${unit}`, unit)
    return {
      value: toUnit(
        Number(
          shapeFromLapAndStraight.compute({
            measuredLap: given('L'),
            measuredStraight: given('S'),
            offset: given('offset'),
          }).radius,
        ),
        unit,
      ),
    }
  }
const strip: Runner = (x) => ({
  value: toUnit(
    Number(
      trackArea.compute({
        straight: ft(x, 'S'),
        radius: ft(x, 'R'),
        widthStraights: ft(x, 'W'),
        widthTurns: ft(x, 'W'),
      }).total,
    ),
    'ft2',
  ),
})
const percent: Runner = (x) => {
  const slope = x.has('percent') ? x.n('percent') / 100 : slopeOf(x.n('rise_in'), x.n('run_in'))
  return { percent: 100 * slope, degrees: toUnit(slopeAngle(slope), '°') }
}
/** The rule of racing that the manual goes by, where a facility says nothing. */
const measuringRule: Runner = () => ({ offset_ft: toUnit(usual('oval.measuring-offset'), 'ft') })
const gravity = (x: Inputs): number => x.si('g_ft_s2', 'ft')
const path = (x: Inputs): number => x.si('r_ft', 'ft')

const POUNDS_PER_GALLON = 8.3454

const gallons = (volume: number, density: number, points: number): number =>
  toUnit(waterToMoisten(volume, density, points, 0), 'lb') / POUNDS_PER_GALLON

/**
 * Dry density for which an arena rule is true: 19.5 gal for each point of moisture in 1,000 ft², 3
 * in deep.
 */
const ruleDensity = (): number => si(19.5 / gallons(si(250, 'ft3'), si(1, 'pcf'), 0.01), 'pcf')

export const geometry: readonly (readonly [RegExp, Runner])[] = [
  [/^A-OVAL-0[134]$/, lap],
  [
    /^A-OVAL-02$/,
    (x) => ({
      value:
        (100 * (Number(shapeFromStraightAndRadius.compute(shapeOf(x)).lap) - ft(x, 'nominal'))) /
        ft(x, 'nominal'),
    }),
  ],
  [/^A-OFF-0/, lap],
  [
    /^A-OFF-1/,
    (x) => ({
      value: toUnit(
        x.n('laps') *
          Number(lapExtra.compute({ out: x.has('move_ft') ? ft(x, 'move') : ft(x, 'w') }).extra),
        'ft',
      ),
    }),
  ],
  [/^A-INV-06$/, radius('m')],
  [/^A-INV-/, radius('ft')],
  [/^A-AREA-01$/, strip],
  [
    /^A-AREA-02$/,
    (x) => ({
      value: toUnit(
        layerVolume(lapLength(ft(x, 'S'), ft(x, 'R'), ft(x, 'W') / 2), ft(x, 'W')),
        'ft2',
      ),
    }),
  ],
  [/^A-AREA-03$/, (x) => ({ value: toUnit(area(x), 'acre') })],
  [/^A-AREA-04$/, (x) => ({ value: toUnit(infieldArea(ft(x, 'S'), ft(x, 'R')), 'ft2') })],
  [/^A-AREA-05$/, (x) => ({ value: slopeStretch(x.n('e')) })],
  [/^A-BANK-0/, percent],
  [
    /^A-BANK-10$/,
    (x) => ({
      value: toUnit(
        Number(
          edgeRise.compute({
            widthStraights: 1,
            crossFallStraights: 0.02,
            widthTurns: ft(x, 'W'),
            crossFallTurns: x.n('e'),
          }).turns,
        ),
        'ft',
      ),
    }),
  ],
  // A mile in two minutes is also the pace that stands in where a facility says nothing.
  [
    /^A-BANK-11$/,
    () => ({
      ft_per_s: toUnit(usual('oval.race-pace'), 'ft'),
      mph: toUnit(usual('oval.race-pace'), 'mph'),
    }),
  ],
  [
    /^A-BANK-12$/,
    (x) => {
      const e = sidePush(x.si('v_ft_s', 'ft'), path(x), gravity(x))
      return { e, degrees: toUnit(slopeAngle(e), '°') }
    },
  ],
  [
    /^A-BANK-13$/,
    (x) => {
      const v = balancedSpeed(x.n('e'), path(x), gravity(x))
      return { ft_per_s: toUnit(v, 'ft'), mph: toUnit(v, 'mph') }
    },
  ],
  [
    /^A-BANK-14$/,
    (x) => ({ value: Number(unbalancedPush(x.si('v_ft_s', 'ft'), path(x), x.n('e'), gravity(x))) }),
  ],
  [/^A-ATH-01$/, (x) => ({ value: lapLength(x.n('S_m'), x.n('R_m'), x.n('offset_m')) })],
  [
    /^A-ATH-02$/,
    (x) => ({
      value: Number(turnLength.compute({ radius: x.n('R_m'), offset: x.n('offset_m') }).length),
    }),
  ],
  [
    /^A-ATH-1/,
    (x) => ({
      value: laneStagger(
        x.n('lane'),
        x.n('lane_width_m'),
        x.n('offset_lane1_m'),
        x.n('offset_others_m'),
      ),
    }),
  ],
  [
    /^A-PYL-01$/,
    (x) => ({
      value: pylonCount(
        ft(x, 'S'),
        ft(x, 'R'),
        x.si('turn_spacing_ft', 'ft'),
        x.si('straight_spacing_ft', 'ft'),
      ),
    }),
  ],
  [/^A-RULE-/, measuringRule],
]

export const trackWork: readonly (readonly [RegExp, Runner])[] = [
  [
    /^B-GRID-01$/,
    (x) => ({
      value: Number(stationCount.compute({ rail: ft(x, 'L'), spacing: ft(x, 'step') }).count),
    }),
  ],
  [/^B-GRID-02$/, () => ({ value: usual('practice.survey.lines') })],
  [
    /^B-WAT-01$/,
    (x) => ({
      value: gallons(
        layerVolume(area(x), x.si('depth_in', 'in')),
        ruleDensity(),
        x.n('points') / 100,
      ),
    }),
  ],
  [/^B-WAT-02$/, () => ({ value: toUnit(ruleDensity(), 'pcf') })],
  [
    /^B-WAT-03$/,
    (x) => ({
      value: gallons(layerVolume(area(x), ft(x, 'depth')), x.si('rho_lb_ft3', 'pcf'), 0.01),
    }),
  ],
  [
    /^B-WAT-04$/,
    (x) => {
      const water = layerVolume(area(x), x.si('rate', 'gal/ft2'))
      return {
        gal: toUnit(water, 'gal'),
        minutes: toUnit(jobTime(water, x.si('gpm', 'gal/min')), 'min'),
      }
    },
  ],
  [/^B-WAT-05$/, () => ({ value: toUnit(si(0.07, 'gal/ft2'), 'in') })],
  [/^B-WAT-06$/, () => ({ value: toUnit(layerVolume(si(1, 'acre'), si(1, 'in')), 'gal') })],
  [/^B-WAT-07$/, (x) => ({ value: toUnit(layerVolume(area(x), x.si('depth_in', 'in')), 'gal') })],
  [
    /^B-REB-01$/,
    (x) => ({
      value: x
        .list('tons')
        .map((tons) =>
          toUnit(layerDepth(si(tons, 'ton'), x.si('rho_lb_ft3', 'pcf'), area(x)), 'in'),
        ),
    }),
  ],
  [
    /^B-DUST-01$/,
    (x) => ({
      value: x
        .list('rate_gal_yd2')
        .map((rate) => toUnit(layerVolume(area(x), si(rate, 'gal/yd2')), 'gal')),
    }),
  ],
  [
    /^B-MOIST-03$/,
    (x) => ({
      value:
        100 * moistureFromProbe(x.n('VMC_pct') / 100, x.n('rho_dry_lb_ft3'), x.n('rho_w_lb_ft3')),
    }),
  ],
]

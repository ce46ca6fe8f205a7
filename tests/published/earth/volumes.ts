import { layerVolume } from '../../../src/compute/materials/layer.ts'
import { conePile, type Pile, windrowPile } from '../../../src/compute/materials/pile.ts'
import {
  bankFromCompacted,
  bankFromLoose,
  compactedFromBank,
  looseDensity,
  looseFromBank,
  looseToCompacted,
} from '../../../src/compute/materials/volume-states.ts'
import { squareCut } from '../../../src/compute/repairs/square-cut.ts'
import { endAreaVolume, prismoidVolume } from '../../../src/compute/survey/end-area.ts'
import { cellVolume, gridVolume } from '../../../src/compute/survey/grid-volume.ts'
import { simpsonArea, trapezoidArea } from '../../../src/compute/survey/offset-area.ts'
import {
  coordinateArea,
  levelSection,
  veeSection,
} from '../../../src/compute/survey/section-area.ts'
import { taperedTrench } from '../../../src/compute/survey/tapered-trench.ts'
import { wholeUp } from '../../../src/compute/whole-up.ts'
import { toUnit } from '../../../src/model/quantity/format-quantity.ts'
import { type Answers, type Runner, si } from './case.ts'

const sum = (xs: readonly number[]): number => xs.reduce((a, b) => a + b, 0)
const earth = (volume: number, density: number): Answers => ({
  cubic_feet: toUnit(volume, 'ft3'),
  cubic_yards: toUnit(volume, 'yd3'),
  tons: toUnit(volume * density, 'ton'),
})
const pile = ({ height, volume }: Pile, density: number): Answers => ({
  height: toUnit(height, 'ft'),
  volume_cf: toUnit(volume, 'ft3'),
  volume_cy: toUnit(volume, 'yd3'),
  tons: toUnit(volume * density, 'ton'),
})

export const volumes: Readonly<Record<string, Runner>> = {
  from_bank: (x) => {
    const [bank, factor] = [x.n('bank'), x.n('shrink_factor')]
    const swell = x.n('load_factor_loose') - 1
    return {
      loose: looseFromBank(bank, swell),
      compacted: compactedFromBank(bank, factor),
      loose_to_compacted: looseToCompacted(swell, factor),
    }
  },
  loose_from_bank: (x) => ({ loose: looseFromBank(x.n('bank'), x.n('swell_pct') / 100) }),
  bank_from_loose: (x) => ({ bank: bankFromLoose(x.n('loose'), x.n('swell_pct') / 100) }),
  bank_from_compacted: (x) => ({ bank: bankFromCompacted(x.n('compacted'), x.n('shrink_factor')) }),
  bank_for_fill: (x) => ({
    bank: bankFromCompacted(x.n('compacted'), 1 - x.n('shrink_pct') / 100),
  }),
  loose_density: (x) => ({
    loose_density: looseDensity(x.n('bank_density'), x.n('swell_pct') / 100),
  }),
  volume_times_factor: (x) => ({ volume: looseFromBank(x.n('volume'), x.n('factor') - 1) }),
  layer_volume_acres: (x) => ({
    cubic_yards: toUnit(layerVolume(x.si('acres', 'acre'), x.si('depth_in', 'in')), 'yd3'),
  }),
  topdress_factor: () => ({ factor: toUnit(layerVolume(si(1, 'ft2'), si(1, 'in')), 'yd3') }),
  lb_per_cy: (x) => ({
    pcf: toUnit(x.si('lb', 'lb/yd3'), 'pcf'),
    tons_per_cy: toUnit(x.si('lb', 'lb/yd3'), 'ton/yd3'),
  }),
  truck_loads: (x) => ({ loads: wholeUp(x.n('loose') / x.n('truck')) }),
  cone_pile: (x) =>
    pile(conePile(x.si('base_diameter', 'ft'), x.si('repose_deg', '°')), x.si('density', 'pcf')),
  windrow_pile: (x) =>
    pile(
      windrowPile(x.si('base_width', 'ft'), x.si('ridge_length', 'ft'), x.si('repose_deg', '°')),
      x.si('density', 'pcf'),
    ),
  average_end_area: (x) => {
    const areas = x.list('areas')
    return {
      volume: sum(
        x
          .list('lengths')
          .map((length, i) => endAreaVolume(areas[i] ?? 0, areas[i + 1] ?? 0, length)),
      ),
    }
  },
  level_section_area: (x) => ({
    area: x.list('depth').map((depth) => levelSection(x.n('base'), x.n('side_slope'), depth)),
  }),
  mean_area_volume: (x) => ({
    volume: sum(x.list('mean_areas').map((area) => endAreaVolume(area, area, x.n('length')))),
  }),
  prismoidal_sum: (x) => {
    const [middle, last] = [x.list('am'), x.list('a2')]
    return {
      volume: sum(
        x
          .list('a1')
          .map((first, i) => prismoidVolume(first, middle[i] ?? 0, last[i] ?? 0, x.n('length'))),
      ),
    }
  },
  highwall_wedge: (x) => {
    const half = x.si('height', 'ft') / 2
    const area = veeSection(x.n('slope_h') * half, half)
    const bank = endAreaVolume(area, area, x.si('length', 'ft'))
    return {
      area: toUnit(area, 'ft2'),
      bank_cy: toUnit(bank, 'yd3'),
      loose_cy: toUnit(looseFromBank(bank, x.n('swell_factor') - 1), 'yd3'),
    }
  },
  grid_cell: (x) =>
    earth(
      cellVolume(
        x.list('cuts').map((h) => si(h, 'ft')),
        x.si('area', 'ft2'),
      ),
      0,
    ),
  // Two cells in a row: four corners counted once, two shared ones twice.
  borrow_grid: (x) => {
    const [a = 0, b = 0, c = 0, d = 0] = x.list('h1').map((h) => si(h, 'ft'))
    const [e = 0, f = 0] = x.list('h2').map((h) => si(h, 'ft'))
    return earth(
      gridVolume(
        [
          [a, e, b],
          [c, f, d],
        ],
        x.si('cell_area', 'ft2'),
      ).cut,
      0,
    )
  },
  wedge_ditch: (x) => {
    const { wedge, pyramid, slope, removed } = taperedTrench({
      width: x.n('B'),
      depth: x.n('H'),
      length: x.n('W'),
      corner: { base: x.n('S'), rise: x.n('y') },
      end: { length: x.n('x'), narrowing: x.n('z') },
    })
    return { sector: wedge, pyramid, slope, removed }
  },
  simpson_area: (x) => ({ area: simpsonArea(x.list('offsets'), x.n('spacing')) }),
  trapezoid_area: (x) => ({ area: trapezoidArea(x.list('offsets'), x.n('spacing')) }),
  coordinate_area: (x) => ({
    area: coordinateArea(x.list('x').map((cx, i) => [cx, x.list('y')[i] ?? 0] as const)),
  }),
  washout_v: (x) => {
    const area = veeSection(x.si('top_width', 'ft'), x.si('depth', 'ft'))
    return earth(endAreaVolume(area, area, x.si('length', 'ft')), x.si('density', 'pcf'))
  },
  washout_rect: (x) => {
    const material = {
      packedWeight: x.si('density', 'pcf'),
      looseWeight: 1600,
      lift: 0.06,
      moisture: 0.08,
      barrow: 0.085,
      thin: 0.025,
      people: 2,
      labor: 60_000,
    }
    const { volume, mass } = squareCut.compute({
      ...material,
      width: x.si('width', 'ft'),
      depth: x.si('depth', 'ft'),
      length: x.si('length', 'ft'),
    })
    return {
      cubic_feet: toUnit(Number(volume), 'ft3'),
      cubic_yards: toUnit(Number(volume), 'yd3'),
      tons: toUnit(Number(mass), 'ton'),
    }
  },
}

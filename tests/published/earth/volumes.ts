import { conePile, type Pile, windrowPile } from '../../../src/compute/materials/pile.ts'
import { squareCut } from '../../../src/compute/repairs/square-cut.ts'
import { endAreaVolume } from '../../../src/compute/survey/end-area.ts'
import { toUnit } from '../../../src/model/quantity/format-quantity.ts'
import type { Answers, Runner } from '../case.ts'

const pile = ({ height, volume }: Pile, density: number): Answers => ({
  height: toUnit(height, 'ft'),
  volume_cf: toUnit(volume, 'ft3'),
  volume_cy: toUnit(volume, 'yd3'),
  tons: toUnit(volume * density, 'ton'),
})

/** What a repair needs besides the size of the cut; it changes neither volume nor mass. */
const repair = {
  looseWeight: 1600,
  lift: 0.06,
  moisture: 0.08,
  barrow: 0.085,
  thin: 0.025,
  people: 2,
  labor: 60_000,
}

export const volumes: Readonly<Record<string, Runner>> = {
  cone_pile: (x) =>
    pile(conePile(x.si('base_diameter', 'ft'), x.si('repose_deg', '°')), x.si('density', 'pcf')),
  windrow_pile: (x) =>
    pile(
      windrowPile(x.si('base_width', 'ft'), x.si('ridge_length', 'ft'), x.si('repose_deg', '°')),
      x.si('density', 'pcf'),
    ),
  average_end_area: (x) => {
    const areas = x.list('areas')
    const parts = x
      .list('lengths')
      .map((length, i) => endAreaVolume(areas[i] ?? 0, areas[i + 1] ?? 0, length))
    return { volume: parts.reduce((sum, part) => sum + part, 0) }
  },
  washout_rect: (x) => {
    const { volume, mass } = squareCut.compute({
      ...repair,
      packedWeight: x.si('density', 'pcf'),
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

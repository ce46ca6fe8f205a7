import {
  compactionEnergy,
  compactionPoint,
  relativeCompaction,
  relativeDensity,
  voidRatioAt,
} from '../../../src/compute/materials/compaction.ts'
import {
  circleStress,
  cornerStress,
  pointInfluence,
  pointLoadFor,
  pointStress,
  tireContact,
} from '../../../src/compute/materials/ground-stress.ts'
import { layerVolume, waterToMoisten } from '../../../src/compute/materials/layer.ts'
import {
  bulkDensity,
  dryDensity,
  porosity,
  saturatedVoidRatio,
  saturation,
  voidRatio,
  voidRatioFromPorosity,
  zeroAirVoids,
} from '../../../src/compute/materials/phase-relations.ts'
import { toUnit } from '../../../src/model/quantity/format-quantity.ts'
import type { Inputs, Runner } from './case.ts'

const moisture = (x: Inputs): number => x.n('w_pct') / 100

export const compaction: Readonly<Record<string, Runner>> = {
  proctor_energy: (x) => ({
    energy: compactionEnergy(x.n('hammer'), x.n('drop'), x.n('layers'), x.n('blows'), x.n('mold')),
  }),
  proctor_point: (x) => {
    const g = (name: string): number => x.si(name, 'g')
    const point = compactionPoint({
      net: g('net_g'),
      mold: x.si('mold_cf', 'ft3'),
      wetAndCan: g('wet_plus_can'),
      dryAndCan: g('dry_plus_can'),
      can: g('can'),
    })
    return {
      w_pct: 100 * point.moisture,
      wet_pcf: toUnit(point.wet, 'pcf'),
      dry_pcf: toUnit(point.dry, 'pcf'),
    }
  },
  percent_proctor: (x) => ({ rc_pct: 100 * relativeCompaction(x.n('dry'), x.n('max_dry')) }),
  relative_compaction: (x) => {
    const dry = dryDensity(x.n('wet'), moisture(x))
    return { dry, rc_pct: 100 * relativeCompaction(dry, x.n('max_dry')) }
  },
  relative_density_field: (x) => {
    const e = voidRatioAt(x.n('Dr'), x.n('emin'), x.n('emax'))
    const at = (filled: number): number => bulkDensity(x.n('gs'), filled, e, x.n('gamma_w'))
    return { e, dry: at(0), bulk: at(Number(saturation(x.n('w'), x.n('gs'), e))) }
  },
  relative_density_e: (x) => ({ Dr: Number(relativeDensity(x.n('e'), x.n('emin'), x.n('emax'))) }),
  phase_from_wet: (x) => {
    const dry = dryDensity(x.n('wet'), moisture(x))
    const e = Number(voidRatio(dry, x.n('gs'), x.n('gamma_w')))
    return { dry, e, n: porosity(e), S_pct: 100 * Number(saturation(moisture(x), x.n('gs'), e)) }
  },
  void_from_porosity: (x) => ({ e: voidRatioFromPorosity(x.n('n')) }),
  saturation: (x) => ({ S: Number(saturation(x.n('w'), x.n('gs'), x.n('e'))) }),
  bulk_weight: (x) => {
    const bulk = bulkDensity(x.n('gs'), x.n('S'), x.n('e'), x.n('gamma_w'))
    return { bulk, effective: bulk - x.n('gamma_w') }
  },
  dry_density: (x) => ({ dry: dryDensity(x.n('wet'), moisture(x)) }),
  e_saturated_from_bulk: (x) => {
    const e = saturatedVoidRatio(x.n('bulk'), x.n('gs'), x.n('gamma_w'))
    return { e, w: e / x.n('gs') }
  },
  zero_air_voids: (x) => ({ zav: zeroAirVoids(x.n('gs'), moisture(x), x.n('gamma_w')) }),
  water_for_compaction: (x) => {
    const volume = x.si('volume_cy', 'yd3')
    const water = toUnit(
      waterToMoisten(
        volume,
        x.si('dry_pcf', 'pcf'),
        x.n('target_pct') / 100,
        x.n('field_pct') / 100,
      ),
      'lb',
    )
    return {
      dry_lb: toUnit(layerVolume(volume, 1) * x.si('dry_pcf', 'pcf'), 'lb'),
      water_lb: water,
      gallons: water / x.n('lb_per_gal'),
    }
  },
  boussinesq_point: (x) => ({
    I: pointInfluence(x.n('r') / x.n('z')),
    stress: pointStress(x.n('P'), x.n('z'), x.n('r')),
  }),
  boussinesq_circle: (x) => ({ stress: circleStress(x.n('q'), x.n('R'), x.n('z')) }),
  boussinesq_rect_corner: (x) => ({ stress: cornerStress(x.n('q'), x.n('L'), x.n('B'), x.n('z')) }),
  boussinesq_table: (x) => ({ I: x.list('ratios').map(pointInfluence) }),
  boussinesq_load: (x) => ({ P: pointLoadFor(x.n('stress'), x.n('z'), x.n('r')) }),
  tire_contact: (x) => {
    const { area, radius } = tireContact(x.si('load', 'lbf'), x.si('pressure', 'psi'))
    return { area: toUnit(area, 'in2'), radius: toUnit(radius, 'in') }
  },
}

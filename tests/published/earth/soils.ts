import { coefficients } from '../../../src/compute/materials/gradation.ts'
import { oversize } from '../../../src/compute/materials/oversize.ts'
import { plasticity } from '../../../src/compute/materials/plasticity.ts'
import { soilGroup } from '../../../src/compute/materials/soil-group.ts'
import { soilTexture } from '../../../src/compute/materials/soil-texture.ts'
import { toUnit } from '../../../src/model/quantity/format-quantity.ts'
import { sieveOpening } from '../../../src/model/sieves.ts'
import type { Inputs, Runner } from '../case.ts'

const group = (x: Inputs): string => {
  const symbol = soilGroup({
    fines: x.n('fines') / 100,
    sand: x.n('sand') / 100,
    ...(x.n('LL') > 0 ? { limits: { liquid: x.n('LL') / 100, plastic: x.n('PL') / 100 } } : {}),
    ...(x.has('D10') ? { sizes: [x.n('D10'), x.n('D30'), x.n('D60')] as const } : {}),
  })
  return typeof symbol === 'string' ? symbol : symbol.refused
}

const texture: Runner = (x) => ({
  texture: x.list('sand').map((sand, i) => soilTexture(sand / 100, (x.list('clay')[i] ?? 0) / 100)),
})

export const soils: Readonly<Record<string, Runner>> = {
  sieve_opening: (x) => ({ mm: x.words('names').map((name) => 1000 * (sieveOpening(name) ?? 0)) }),
  gradation: (x) => {
    const { uniformity, curvature } = coefficients(x.n('D10'), x.n('D30'), x.n('D60'))
    return { Cu: uniformity, Cc: curvature }
  },
  oversize: (x) => {
    const share = (name: string): number => x.n(name) / 100
    const out = oversize.compute({
      highest: x.si('highest', 'pcf'),
      best: share('best'),
      coarse: share('coarse'),
      gravity: x.n('gravity'),
      moisture: share('moisture'),
    })
    return { highest: toUnit(Number(out.highest), 'pcf'), best: Number(out.best) * 100 }
  },
  plasticity: (x) => {
    const out = plasticity.compute({
      liquid: x.n('liquid') / 100,
      plastic: x.n('plastic') / 100,
      moisture: x.n('moisture') / 100,
    })
    return { index: Number(out.index) * 100, liquidity: Number(out.liquidity) }
  },
  uscs: (x) => ({ group: group(x) }),
  usda_texture: texture,
}

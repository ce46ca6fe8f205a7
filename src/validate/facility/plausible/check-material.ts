import type { Problem } from '../../../model/problem.ts'
import type { Path } from '../../../read/read-yaml.ts'
import { readMeasured } from '../../read-measured.ts'
import type { ParsedFacility } from '../parsed-facility.ts'
import { factAt, statedAt, written } from './valued.ts'

/** From the lightest: the same stone lies ever more closely, and solid grains last. */
const order = ['loose', 'worked', 'compacted', 'solids'] as const

/** Unit weights rise from loose to solid. */
function outOfOrder(parsed: ParsedFacility): Problem[] {
  const weights = order.map((name) => ({
    name,
    path: ['cushion', 'unit-weight', name],
    is: factAt(parsed, `cushion.unit-weight.${name}`),
  }))
  return weights.slice(1).flatMap((heavy, i) => {
    const light = weights[i]
    const stated = heavy.is?.path ? heavy : light
    if (!light?.is || !heavy.is || !stated?.is?.path || light.is.si < heavy.is.si) return []
    return [
      parsed.tree.problem(
        parsed.tree.placeOf(stated.path),
        'facility/odd',
        `${light.name} (${written(parsed, light.path) || 'usual'}) must weigh less than ${heavy.name} (${written(parsed, heavy.path) || 'usual'})`,
        {
          hint: 'the same material weighs more the closer it lies: loose, worked, compacted, solid',
        },
      ),
    ]
  })
}

/** Solid grains heavier than this, kg/m³, are ore and no track. */
const heaviestGrains = 2950

/** Dry weight beyond which no air would be left between the grains, kg/m³ (zero-air line). */
const withoutAir = (moisture: number, grains: number): number =>
  grains / (1 + (moisture * grains) / 1000)

/** Grains of limestone, granite and quartz weigh no more than this, kg/m³. */
const usualGrains = 2760

/** A weight that leaves no room for air: impossible, or only with grains heavier than usual. */
function airless(
  parsed: ParsedFacility,
  at: { readonly weight: Path; readonly moisture: Path },
  dry: number,
  moisture: number,
): Problem[] {
  if (dry <= withoutAir(moisture, usualGrains)) return []
  const never = dry > withoutAir(moisture, heaviestGrains)
  return [
    parsed.tree.problem(
      parsed.tree.placeOf(at.weight),
      'facility/odd',
      `${written(parsed, at.weight)} at ${written(parsed, at.moisture)} leaves ${never ? 'less than no' : 'no'} air between the grains`,
      {
        hint: 'is it the wet or the dry unit weight that is asked for, and its own moisture?',
        severity: never ? 'error' : 'warning',
      },
    ),
  ]
}

/** No density test lies beyond the zero-air line. */
const densities = (parsed: ParsedFacility): Problem[] =>
  (parsed.file.base?.density ?? []).flatMap((_, i) => {
    const at = {
      weight: ['base', 'density', i, 'wet'],
      moisture: ['base', 'density', i, 'moisture'],
    }
    const [wet, moisture] = [statedAt(parsed, at.weight), statedAt(parsed, at.moisture)]
    return wet && moisture ? airless(parsed, at, wet.si / (1 + moisture.si), moisture.si) : []
  })

/** Nor does the highest dry weight of the laboratory. */
function proctor(parsed: ParsedFacility): Problem[] {
  const at = {
    weight: ['base', 'proctor', 'highest'],
    moisture: ['base', 'proctor', 'best-moisture'],
  }
  const [highest, moisture] = [statedAt(parsed, at.weight), statedAt(parsed, at.moisture)]
  return highest && moisture ? airless(parsed, at, highest.si, moisture.si) : []
}

/** No more water was found in the cushion than its pores hold. */
function drowned(parsed: ParsedFacility): Problem[] {
  const [worked, solids] = [
    factAt(parsed, 'cushion.unit-weight.worked'),
    factAt(parsed, 'cushion.unit-weight.solids'),
  ]
  if (!worked || !solids) return []
  const most = 1000 * (1 / worked.si - 1 / solids.si)
  return (parsed.file.measurements ?? []).flatMap(({ of, value }, i) => {
    const read = of === 'cushion.moisture.found' ? readMeasured(of, value) : undefined
    if (!read || 'params' in read || read.si <= most) return []
    const path = ['measurements', i, 'value']
    return [
      parsed.tree.problem(
        parsed.tree.placeOf(path),
        'facility/odd',
        `${written(parsed, path)} of water is more than the pores of the cushion hold, ${(100 * most).toFixed(0)} %`,
        {
          hint: 'moisture is counted by dry weight: water / dry material; is the decimal point right?',
        },
      ),
    ]
  })
}

/** Moisture wanted lies between dust and what the cushion holds. */
function moistureWanted(parsed: ParsedFacility): Problem[] {
  const { tree } = parsed
  const path = ['cushion', 'moisture', 'target']
  const [target, held, dusty] = [
    statedAt(parsed, path),
    factAt(parsed, 'cushion.moisture.held'),
    factAt(parsed, 'cushion.moisture.dusty'),
  ]
  if (!target || !held || !dusty || (target.si < held.si && target.si > dusty.si)) return []
  const wet = target.si >= held.si
  return [
    tree.problem(
      tree.placeOf(path),
      'facility/odd',
      wet
        ? `${written(parsed, path)} is no less than the ${(100 * held.si).toFixed(1)} % that the cushion holds drained`
        : `${written(parsed, path)} is no more than the ${(100 * dusty.si).toFixed(1)} % at which it dusts`,
      { hint: 'moisture is counted by dry weight; measure held and dusty, or change the target' },
    ),
  ]
}

/** Weights and moistures of the material fit each other. */
export const checkMaterial = (parsed: ParsedFacility): Problem[] => [
  ...outOfOrder(parsed),
  ...densities(parsed),
  ...proctor(parsed),
  ...drowned(parsed),
  ...moistureWanted(parsed),
]

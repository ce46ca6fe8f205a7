import type { Problem } from '../../../model/problem.ts'
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
const withoutAir = (moisture: number): number =>
  heaviestGrains / (1 + (moisture * heaviestGrains) / 1000)

/** No density test lies beyond the zero-air line. */
const beyondAir = (parsed: ParsedFacility): Problem[] =>
  (parsed.file.base?.density ?? []).flatMap((_, i) => {
    const [wet, moisture] = [
      statedAt(parsed, ['base', 'density', i, 'wet']),
      statedAt(parsed, ['base', 'density', i, 'moisture']),
    ]
    if (!wet || !moisture) return []
    const dry = wet.si / (1 + moisture.si)
    if (dry <= withoutAir(moisture.si)) return []
    return [
      parsed.tree.problem(
        parsed.tree.placeOf(['base', 'density', i, 'wet']),
        'facility/odd',
        `${written(parsed, ['base', 'density', i, 'wet'])} at ${written(parsed, ['base', 'density', i, 'moisture'])} leaves less than no air between the grains`,
        { hint: 'is it the wet unit weight, and its own moisture?' },
      ),
    ]
  })

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
  ...beyondAir(parsed),
  ...moistureWanted(parsed),
]

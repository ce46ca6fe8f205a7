import { soilGroup } from '../../compute/materials/soil-group.ts'
import { soilTexture, type Texture } from '../../compute/materials/soil-texture.ts'
import type { Manual } from '../../model/manual.ts'
import type { Words } from '../../validate/schemas/words.ts'
import { shortDate } from './dates.ts'
import { numberOf, type PlanContext, printed } from './plan-context.ts'

type Rows = readonly (readonly string[])[]

/** The latest sieve analysis, sieve by sieve, coarsest first. */
export function sievePointRows(context: PlanContext): Rows {
  const test = context.facility.tests.sieves.at(-1)
  return (test?.sieves ?? []).map((s) => [
    s.name,
    printed(s.opening, 'sieveSize', context),
    printed(s.passing, 'share', context),
  ])
}

/** Textures that feel alike when they are squeezed, as the feel test groups them. */
const feelOf: Readonly<Record<Texture, keyof Words['soils']['feel']>> = {
  sand: 'coarse',
  'loamy sand': 'coarse',
  'sandy loam': 'moderately-coarse',
  'sandy clay loam': 'medium',
  loam: 'medium',
  'silt loam': 'medium',
  silt: 'medium',
  clay: 'fine',
  'sandy clay': 'fine',
  'silty clay': 'fine',
  'clay loam': 'fine',
  'silty clay loam': 'fine',
}

const si = (context: PlanContext, name: string): number | undefined =>
  numberOf(context.computed.engine, name)

function groupRow(context: PlanContext): readonly string[] {
  const { words } = context
  const test = context.facility.tests.sieves.at(-1)
  const [fines, sand, d10, d30, d60] = [
    'sieve.fines',
    'sieve.sand',
    'sieve.d10',
    'sieve.d30',
    'sieve.d60',
  ].map((name) => si(context, name))
  const unknown = [words.plans.group, words.plans.notTold]
  if (!test || fines === undefined || sand === undefined) return unknown
  const group = soilGroup({
    fines,
    sand,
    ...(test.limits ? { limits: test.limits } : {}),
    ...(d10 !== undefined && d30 !== undefined && d60 !== undefined
      ? { sizes: [d10, d30, d60] as const }
      : {}),
  })
  if (typeof group !== 'string')
    return [words.plans.group, `${words.plans.notTold}: ${group.refused}`]
  const meanings: Readonly<Record<string, string>> = words.soils.groups
  return [
    words.plans.group,
    `${group}: ${group
      .split('-')
      .map((symbol) => meanings[symbol] ?? symbol)
      .join('; ')}`,
  ]
}

/** Texture looks only at what is finer than 2 mm, and at clay from a hydrometer. */
function textureRows(context: PlanContext): Rows {
  const { words } = context
  const test = context.facility.tests.sieves.at(-1)
  const below = test?.sieves.find((s) => Math.abs(s.opening - 0.002) < 1e-6)?.passing
  const fines = si(context, 'sieve.fines')
  if (!test || test.clay === undefined || below === undefined || fines === undefined)
    return [[words.plans.texture, words.plans.noClay]]
  const texture = soilTexture(Math.max(0, 1 - fines / below), Math.min(1, test.clay / below))
  return [
    [words.plans.texture, words.soils.textures[texture]],
    [words.plans.feel, words.soils.feel[feelOf[texture]]],
  ]
}

/** Names and words for the material, each with why it cannot be told where it cannot. */
export function materialClassRows(context: PlanContext): Rows {
  const test = context.facility.tests.sieves.at(-1)
  if (!test) return []
  return [
    [
      context.words.plans.sample,
      `${shortDate(test.date, context.computed.locale.system)}, ${test.date.slice(0, 4)}, ${test.by}`,
    ],
    groupRow(context),
    ...textureRows(context),
  ]
}

/** The grain-size curve as its drawing needs it. */
export function composeGrainCurve(context: PlanContext): Manual['grainCurve'] {
  const test = context.facility.tests.sieves.at(-1)
  const grit = si(context, 'cushion.grit.size')
  if (!test || grit === undefined) return undefined
  return {
    points: test.sieves,
    grit,
    gritText: printed(grit, 'grain', context),
    sizes: ['d10', 'd30', 'd60'].flatMap((name) => {
      const size = si(context, `sieve.${name}`)
      return size === undefined
        ? []
        : [{ name: name.toUpperCase(), share: Number(name.slice(1)) / 100, size }]
    }),
  }
}

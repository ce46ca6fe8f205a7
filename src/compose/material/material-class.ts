import { soilGroup } from '../../compute/materials/soil-group.ts'
import { soilTexture, type Texture } from '../../compute/materials/soil-texture.ts'
import type { TableRows } from '../../model/manual/schedule.ts'
import type { SieveTest } from '../../model/material-tests.ts'
import { formatExact } from '../../model/quantity/format-exact.ts'
import type { Words } from '../../validate/schemas/words.ts'
import { type ComposeContext, printed } from '../context.ts'
import { dateWithYear } from '../dates.ts'

/** The latest sieve analysis, sieve by sieve, coarsest first. */
export function sievePointRows(context: ComposeContext): TableRows {
  const test = context.facility.tests.sieves.at(-1)
  return (test?.sieves ?? []).map((s) => [
    s.name,
    // An opening has a name of its own, 0.075 mm, that rounding would change.
    formatExact(s.opening, 'sieveSize', context.locale),
    printed(s.passing, 'share', context),
  ])
}

/** Symbol of the soil group with its plain meaning, or why it cannot be told. */
function groupOf(test: SieveTest, { engine, library }: ComposeContext): string {
  const { words } = library
  const shares = engine.siOfAll({ fines: 'sieve.fines', sand: 'sieve.sand' })
  const sizes = engine.siOfAll({ d10: 'sieve.d10', d30: 'sieve.d30', d60: 'sieve.d60' })
  if (!shares) return words.plans.notTold
  const group = soilGroup({
    ...shares,
    ...(test.limits ? { limits: test.limits } : {}),
    ...(sizes ? { sizes: [sizes.d10, sizes.d30, sizes.d60] as const } : {}),
  })
  if (typeof group !== 'string') return `${words.plans.notTold}: ${words.plans.noSizes}`
  const meanings: Readonly<Record<string, string>> = words.soils.groups
  return `${group}: ${group
    .split('-')
    .map((symbol) => meanings[symbol] ?? symbol)
    .join('; ')}`
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

/** Sieve below which texture is looked at, m. */
const fineEarth = 0.002

/** Texture looks only at what is finer than 2 mm, and at clay from a hydrometer. */
function textureRows(test: SieveTest, { engine, library }: ComposeContext): TableRows {
  const { words } = library
  const below = test.sieves.find((s) => Math.abs(s.opening - fineEarth) < 1e-6)?.passing
  const fines = engine.si('sieve.fines')
  if (test.clay === undefined || below === undefined || fines === undefined)
    return [[words.plans.texture, words.plans.noClay]]
  const texture = soilTexture(Math.max(0, 1 - fines / below), Math.min(1, test.clay / below))
  return [
    [words.plans.texture, words.soils.textures[texture]],
    [words.plans.feel, words.soils.feel[feelOf[texture]]],
  ]
}

/** Names and words for the material, each with why it cannot be told where it cannot. */
export function materialClassRows(context: ComposeContext): TableRows {
  const { facility, library } = context
  const test = facility.tests.sieves.at(-1)
  if (!test) return []
  const { words } = library
  return [
    [words.plans.sample, `${dateWithYear(test.date, context)}, ${test.by}`],
    [words.plans.group, groupOf(test, context)],
    ...textureRows(test, context),
  ]
}

import { share } from './guards.ts'

/** The twelve classes of the soil-texture triangle. */
export const textures = [
  'sand',
  'loamy sand',
  'silty clay',
  'clay',
  'sandy clay',
  'silty clay loam',
  'clay loam',
  'sandy clay loam',
  'silt',
  'silt loam',
  'loam',
  'sandy loam',
] as const
export type Texture = (typeof textures)[number]

/** Keeps shares that stand exactly on a line of the triangle from falling off it. */
const EPS = 1e-9

const atLeast = (x: number, limit: number): boolean => x >= limit - EPS
const below = (x: number, limit: number): boolean => !atLeast(x, limit)
const atMost = (x: number, limit: number): boolean => x <= limit + EPS

/**
 * Texture class of the part of a soil finer than 2 mm. Sand is 0.05 to 2 mm here, so a No. 200
 * sieve does not part it from silt.
 * @param sand Share by mass, 0 to 1.
 * @param clay Share by mass, 0 to 1; what is left is silt.
 * @returns The class; the order of the tests is part of the rule.
 * @throws RangeError when a share is not a share, or the two add up to more than one.
 * @see usda-soil-survey-manual
 */
export function soilTexture(sand: number, clay: number): Texture {
  share('sand', sand)
  share('clay', clay)
  const silt = 1 - sand - clay
  if (!(silt >= -EPS)) throw new RangeError('sand and clay add up to more than the sample')
  if (below(silt + 1.5 * clay, 0.15)) return 'sand'
  if (below(silt + 2 * clay, 0.3)) return 'loamy sand'
  if (atLeast(clay, 0.4) && atLeast(silt, 0.4)) return 'silty clay'
  if (atLeast(clay, 0.4) && atMost(sand, 0.45)) return 'clay'
  if (atLeast(clay, 0.35) && !atMost(sand, 0.45)) return 'sandy clay'
  if (atLeast(clay, 0.27) && atMost(sand, 0.2)) return 'silty clay loam'
  if (atLeast(clay, 0.27) && atMost(sand, 0.45)) return 'clay loam'
  if (atLeast(clay, 0.2) && below(silt, 0.28) && !atMost(sand, 0.45)) return 'sandy clay loam'
  if (atLeast(silt, 0.8) && below(clay, 0.12)) return 'silt'
  if (atLeast(silt, 0.5)) return 'silt loam'
  if (atLeast(clay, 0.07) && atLeast(silt, 0.28) && atMost(sand, 0.52)) return 'loam'
  return 'sandy loam'
}

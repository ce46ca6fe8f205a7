import { notNegative, positive } from './guards.ts'

/**
 * Volume of an even layer.
 * @param area m², ≥ 0.
 * @param depth m, ≥ 0.
 * @returns m³, not rounded.
 * @throws RangeError when an argument is out of range.
 * @see geometry
 * @example layerVolume(4046.8564224, 0.0254) // 102.79 m³, the acre-inch
 */
export const layerVolume = (area: number, depth: number): number =>
  notNegative('area', area) * notNegative('depth', depth)

/**
 * Depth to which a mass spreads over an area.
 *
 *     depth = mass ÷ (density × area)
 *
 * @param mass kg, ≥ 0.
 * @param density kg/m³ in the state in which it lies, above 0.
 * @param area m², above 0.
 * @returns m, not rounded.
 * @throws RangeError when an argument is out of range.
 * @see geometry
 */
export const layerDepth = (mass: number, density: number, area: number): number =>
  notNegative('mass', mass) / (positive('density', density) * positive('area', area))

/**
 * Water that changes the moisture of soil.
 *
 *     water = volume × dry density × (wanted − found)
 *
 * @param volume Volume of the layer, m³, ≥ 0; in the state to which the density belongs.
 * @param dryDensity kg/m³, above 0.
 * @param wanted Moisture by dry mass, ≥ 0.
 * @param found Moisture by dry mass, ≥ 0.
 * @returns kg of water, not rounded; below zero where the soil must dry.
 * @throws RangeError when an argument is out of range.
 */
export const waterToMoisten = (
  volume: number,
  dryDensity: number,
  wanted: number,
  found: number,
): number =>
  notNegative('volume', volume) *
  positive('dry density', dryDensity) *
  (notNegative('wanted moisture', wanted) - notNegative('moisture found', found))

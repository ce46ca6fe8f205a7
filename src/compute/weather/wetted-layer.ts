/**
 * Where the water of a rain goes on a bare layer over a base: a bucket, since how hard it rains
 * decides little here; the pores of a layer as thin as a cushion are full within the first hour.
 */

/** Water, kg/m³. */
const waterWeight = 1000

/** What the layer and the ground below can still take; m of water. */
export type Room = {
  /** Pores that rain can fill. */
  readonly pores: number
  /** What the layer can take before it is moister than it holds; below zero when it is already. */
  readonly toHeld: number
  /** What the base can take out of rain and out of what the layer does not hold. */
  readonly base: number
  /** What can stand in the hollows of the surface. */
  readonly hollows: number
}

/** Parts of a rain; m of water. They add up to it. */
export type Parts = {
  readonly layer: number
  readonly base: number
  readonly stands: number
  readonly runs: number
}

/** Parts a depth of water, m, that comes down on the layer. */
export function partWater(water: number, room: Room): Parts {
  const first = Math.min(water, room.pores)
  const base = Math.min(room.base, water - first + Math.max(0, first - room.toHeld))
  const layer = Math.min(room.pores, water - base)
  const stands = Math.min(room.hollows, water - base - layer)
  return { layer, base, stands, runs: water - base - layer - stands }
}

/** A layer by its dry material; SI. */
export type LayerMaterial = {
  /** Depth, m, at the worked unit weight, kg/m³. */
  readonly depth: number
  readonly worked: number
  /** Unit weight of the solid grains, kg/m³. */
  readonly solids: number
}

/** Water, m, in the layer for each unit of moisture by dry weight. */
export const waterOfMoisture = ({ depth, worked }: LayerMaterial): number =>
  (depth * worked) / waterWeight

/**
 * Water, m, that the pores of a layer hold when as many as `filling` of them are full.
 * @param weight Unit weight to which the layer is pressed, kg/m³; its material stays the same.
 */
export const poreWater = (m: LayerMaterial, weight: number, filling: number): number =>
  filling * (1 - weight / m.solids) * m.depth * (m.worked / weight)

/**
 * Evaporation from a wetted surface: FAO Irrigation and Drainage Paper 56 (1998), chapter 7. Depths
 * in mm.
 */

/**
 * Water that a layer can lose by evaporation, mm (Eq. 73); water contents by volume, layer in
 * meters.
 */
export const evaporableWater = (
  fieldCapacity: number,
  wiltingPoint: number,
  layer: number,
): number => 1000 * (fieldCapacity - 0.5 * wiltingPoint) * layer

/** How much evaporation is held back by a dried surface, 1 to 0 (Eq. 74). */
export function reduction(depleted: number, readily: number, total: number): number {
  return depleted <= readily ? 1 : Math.max(0, (total - depleted) / (total - readily))
}

export type EvaporationDay = {
  readonly few: number
  readonly kr: number
  readonly ke: number
  readonly e: number
  readonly end: number
}

export type SurfaceDay = {
  readonly start: number
  readonly readily: number
  readonly total: number
  readonly kcMax: number
  readonly kcb: number
  readonly exposed: number
  readonly wetted: number
  readonly eto: number
}

/**
 * One day of a drying surface (Eqs. 71, 74, 75, 77): water has landed before the day's reduction is
 * taken.
 */
export function evaporationDay(d: SurfaceDay): EvaporationDay {
  const few = Math.min(d.exposed, d.wetted)
  const kr = reduction(d.start, d.readily, d.total)
  const ke = Math.min(kr * (d.kcMax - d.kcb), few * d.kcMax)
  const e = ke * d.eto
  return { few, kr, ke, e, end: Math.min(d.total, d.start + e / few) }
}

/** Depletion at the start of a day, mm, after rain and watering over the wetted share. */
export const afterWater = (
  depleted: number,
  rain: number,
  watering: number,
  wetted: number,
): number => Math.max(0, depleted - rain - watering / wetted)

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

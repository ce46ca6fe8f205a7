import { positive } from '../materials/guards.ts'

/**
 * Area, m², inside the rail: 2 R S + π R². @param straight m, ≥ 0. @param radius At the rail, m,
 * above 0. @throws RangeError for no radius. @see geometry
 */
export const infieldArea = (straight: number, radius: number): number =>
  2 * positive('radius', radius) * straight + Math.PI * radius ** 2

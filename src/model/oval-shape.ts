/**
 * The shape of an oval: two equal straights and two half circles. Two of lap, straight and radius
 * give the third; whoever needs it works it out here.
 */

/**
 * Length of one lap of an oval of two equal straights and two half circles, driven or run at a
 * distance from the rail.
 *
 *     L(x) = 2 S + 2π (R + x)
 *
 * @param straight One straight, m, ≥ 0.
 * @param radius Turn radius at the rail, m, > 0.
 * @param out Distance outside the rail, m; negative is inside it.
 * @returns Meters, not rounded.
 * @see geometry
 * @example lapLength(84.39, 36.5, 0.3) // 400.00, an athletics track measured 0.30 m from its curb
 */
export const lapLength = (straight: number, radius: number, out: number): number =>
  2 * straight + 2 * Math.PI * (radius + out)

/**
 * Turn radius at the rail that a lap and a straight leave, m; not above zero where they leave none.
 * @param out Distance outside the rail at which the lap was measured, m.
 */
export const radiusFrom = (lap: number, straight: number, out: number): number =>
  (lap - 2 * straight) / (2 * Math.PI) - out

/**
 * One straight that a lap and a turn radius at the rail leave, m; below zero where they leave none.
 * @param out Distance outside the rail at which the lap was measured, m.
 */
export const straightFrom = (lap: number, radius: number, out: number): number =>
  lap / 2 - Math.PI * (radius + out)

/** Area of both straights, m². @see geometry */
export const straightsArea = (straight: number, width: number): number => 2 * straight * width

/** Area of both turns, a ring outside the rail, m². @see geometry */
export const turnsArea = (radius: number, width: number): number =>
  Math.PI * width * (2 * radius + width)

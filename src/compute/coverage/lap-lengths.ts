import { lapLength } from '../../model/oval-shape.ts'

/**
 * Length of every lap that covers a track from the rail to the outside, each driven along the
 * middle of its strip. Strips are spread evenly over the width, so that the last one ends at the
 * outside edge and not beyond it.
 *
 *     L(i) = 2 S + 2π (R + (i + ½) W/n),  i = 0 … n−1
 *
 * @param straight One straight, m, ≥ 0.
 * @param radius Turn radius at the rail, m, > 0.
 * @param width Track width on the turns, m, > 0.
 * @param strips Number of strips, whole, ≥ 1.
 * @returns Meters, from the rail outward.
 * @see geometry
 */
export const lapLengths = (
  straight: number,
  radius: number,
  width: number,
  strips: number,
): readonly number[] =>
  Array.from({ length: strips }, (_, i) =>
    lapLength(straight, radius, ((i + 0.5) * width) / strips),
  )

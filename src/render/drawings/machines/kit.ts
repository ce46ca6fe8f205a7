import { area, black, disc, lineOf, paper, rect, stroke } from '../ink.ts'
import type { Point } from '../svg.ts'

/** A box by its near left corner and its size, feet. */
type Box = readonly [x: number, y: number, long: number, wide: number]

type Shape = { readonly fill?: string; readonly pen?: number; readonly round?: number }

/**
 * Parts of machines seen from above, in feet from the machine's own middle, driving to the right
 * with the rail on the left hand.
 * @param k Points a foot.
 * @param pen How heavy the pens are against those of a large machine.
 */
export const partsKit = (k: number, pen: number) => {
  const at = ([x, y]: Point): Point => [x * k, y * k]
  return {
    box: ([x, y, long, wide]: Box, { fill = paper, pen: p = 0.9, round = 0 }: Shape = {}): string =>
      rect(at([x, y]), at([long, wide]), { fill, width: p * pen, round: round * k }),
    tire: ([x, y, long, wide]: Box): string =>
      rect(at([x, y]), at([long, wide]), { fill: black, round: 0.25 * k }),
    line: (points: readonly Point[], p = 0.9): string => lineOf(points.map(at), p * pen),
    area: (points: readonly Point[], fill: string = paper, p = 0.9): string =>
      area(points.map(at), fill, p * pen),
    disc: (middle: Point, radius: number, fill: string = paper): string =>
      disc(at(middle), radius * k, fill, 0.9 * pen),
    strokes: (lines: readonly (readonly [Point, Point])[], p: number): string =>
      stroke(
        lines
          .map(([a, b]) => [at(a), at(b)])
          .map((pair) =>
            pair
              .map(
                (q, i) =>
                  `${i === 0 ? 'M' : 'L'}${q?.map((v) => Math.round(v * 10) / 10).join(' ')}`,
              )
              .join(''),
          )
          .join(''),
        p * pen,
      ),
  }
}

export type PartsKit = ReturnType<typeof partsKit>

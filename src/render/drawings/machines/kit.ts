import { area, type Color, disc, type Point, poly, slab, stroke } from '../ink.ts'

/** A box by its near left corner and its size, feet. */
type Box = readonly [x: number, y: number, long: number, wide: number]

type Shape = { readonly fill?: Color; readonly pen?: number; readonly round?: number }

/**
 * Parts of machines seen from above, in feet from the machine's own middle, driving to the right
 * with the rail on the left hand.
 * @param k Points a foot.
 * @param pen How heavy the pens are against those of a large machine.
 */
export const partsKit = (k: number, pen: number) => {
  const at = ([x, y]: Point): Point => [x * k, y * k]
  return {
    box: (
      [x, y, long, wide]: Box,
      { fill = 'paper', pen: p = 0.9, round = 0 }: Shape = {},
    ): string => slab(at([x, y]), ...at([long, wide]), { fill, pen: p * pen }, round * k),
    tire: ([x, y, long, wide]: Box): string =>
      slab(at([x, y]), ...at([long, wide]), { fill: 'ink', stroke: 'none' }, 0.25 * k),
    line: (points: readonly Point[], p = 0.9): string => poly(points.map(at), { pen: p * pen }),
    area: (points: readonly Point[], fill: Color = 'paper', p = 0.9): string =>
      area(points.map(at), { fill, pen: p * pen }),
    disc: (middle: Point, radius: number, fill: Color = 'paper'): string =>
      disc(at(middle), radius * k, { fill, pen: 0.9 * pen }),
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
        { pen: p * pen },
      ),
  }
}

export type PartsKit = ReturnType<typeof partsKit>

import { area, disc, type Point, poly, scatter, stroke, through } from '../../ink.ts'

/** Inches on the ground; the toe to the right, the middle of the foot near 0, 0. */

const rad = (degrees: number): number => (degrees * Math.PI) / 180

/**
 * A point on the edge of a shoe: from the toe (0°) around both sides to the heels (±138°).
 * @param q 1 for the outer edge, about 0.66 for the inner.
 */
function edge(degrees: number, q = 1): Point {
  const turned = Math.abs(degrees)
  if (turned <= 90)
    return [2.35 * q * Math.cos(rad(degrees)) + 0.3, 2.35 * q * Math.sin(rad(degrees))]
  const back = (turned - 90) / 48
  return [0.3 - 2.75 * back, Math.sign(degrees) * 2.35 * q * (1 - 0.2 * back * back)]
}

const sweep = (from: number, to: number, step = 6): number[] =>
  Array.from(
    { length: Math.floor(Math.abs(to - from) / step) + 1 },
    (_, i) => from + Math.sign(to - from) * i * step,
  )

const scaled = (points: readonly Point[], u: number): Point[] =>
  points.map(([x, y]) => [x * u, y * u])

const rim = (q: number, from = -138, to = 138): Point[] => sweep(from, to).map((a) => edge(a, q))

/** The iron itself. */
export const iron = (u: number): Point[] => scaled([...rim(1), ...rim(0.66).reverse()], u)

/** The whole foot, with the notch between the heels. */
export const foot = (u: number, q = 1): Point[] =>
  scaled(
    [...rim(q), [-2.75 * q, 1.1 * q], [-2.1 * q, 0.3], [-2.1 * q, -0.3], [-2.75 * q, -1.1 * q]],
    u,
  )

const wedges: readonly (readonly Point[])[] = [
  [
    [-2.5, -0.95],
    [0.7, 0],
    [-2.5, 0.95],
  ],
  [
    [-2.2, -0.3],
    [-0.7, 0],
    [-2.2, 0.3],
  ],
]

/** The frog: a wedge that points to the toe, with its furrow. */
export const frog = (u: number, dash?: string): string =>
  wedges
    .map((wedge) => poly(scaled(wedge, u), dash === undefined ? { pen: 0.8 } : { pen: 0.8, dash }))
    .join('')

/** Heads of the nails, four a side. */
export const nails = (u: number): string =>
  [28, 50, 72, 94]
    .flatMap((a) => [a, -a])
    .map((a) => {
      const [x, y] = edge(a, 0.83)
      return disc([x * u, y * u], 0.17 * u, { fill: 'ink', pen: 0.3 })
    })
    .join('')

/** A part of the edge alone. */
export const arc = (u: number, from: number, to: number, q: number, pen: number, dash?: string) =>
  poly(scaled(rim(q, from, to), u), { pen, ...(dash === undefined ? {} : { dash }) })

/** Strokes inward from the edge: the longer, the deeper it goes down there. */
export const inward = (u: number, deep: (degrees: number) => number): string =>
  stroke(
    sweep(-130, 130, 7)
      .map((a) => through(scaled([edge(a), edge(a, 1 - deep(a))], u)))
      .join(''),
    { pen: 0.6 },
  )

/** The dark crescent where a toe has dug in. */
export const toe = (u: number): string =>
  area(scaled([...rim(0.99, -48, 48), ...sweep(40, -40).map((a) => edge(a, 0.62))], u), {
    fill: 'ink',
    pen: 0.4,
  })

/** A ring around the foot, `k` times as large, uneven by `jag`. */
export function ring(u: number, k: number, jag: number, seed: number): Point[] {
  const random = scatter(seed)
  return sweep(-180, 171, 9).map((a): Point => {
    const r = k * (1 + (random() - 0.5) * jag)
    return [2.6 * r * Math.cos(rad(a)) * u, 2.35 * r * Math.sin(rad(a)) * u]
  })
}

/** Strokes between two such rings. */
export const between = (u: number, outer: number, inner: number): string =>
  stroke(
    sweep(-174, 174, 12)
      .map((a) =>
        through(
          [outer, inner].map(
            (k): Point => [2.6 * k * Math.cos(rad(a)) * u, 2.35 * k * Math.sin(rad(a)) * u],
          ),
        ),
      )
      .join(''),
    { pen: 'hair' },
  )

/** Crumbs of material at places that `at` finds. */
export function crumbs(
  u: number,
  count: number,
  size: number,
  seed: number,
  at: (random: () => number) => Point,
): string {
  const random = scatter(seed)
  return Array.from({ length: count }, () => {
    const [x, y] = at(random)
    const s = size * (0.5 + random())
    return area(
      scaled(
        [
          [x - s, y + s * 0.4],
          [x - s * 0.2, y - s * 0.8],
          [x + s, y - s * 0.1],
          [x + s * 0.4, y + s * 0.8],
        ],
        u,
      ),
      { fill: 'stone', pen: 0.7 },
    )
  }).join('')
}

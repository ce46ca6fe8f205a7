import { disc, limbs, type Point, poly, slab, stroke } from '../ink.ts'

/** An open left hand, palm up, fingers to the right; the palm's middle at 0, 0; about 90 by 46. */
export function openHand(spread = 1): string {
  const fingers = (
    [
      [-13.2, 24, -0.1],
      [-4.5, 31, -0.03],
      [4.5, 29.5, 0.04],
      [13.2, 22, 0.12],
    ] as const
  ).map(([y, long, lean]) => ({
    at: [
      [8, y * 0.95],
      [18, y],
      [16 + long, y + lean * long * spread],
    ] as Point[],
    wide: 7.3,
  }))
  const palm: Point[] = [
    [-9, -9],
    [8, -10],
    [9, 10],
    [-9, 9],
    [-9, -9],
    [0, 0],
    [9, 8],
  ]
  return (
    limbs([
      {
        at: [
          [-38, 3],
          [-18, 1],
        ],
        wide: 19,
      },
      { at: palm, wide: 15 },
      ...fingers,
      {
        at: [
          [-10, -10],
          [2, -23],
          [14, -29],
        ],
        wide: 8.6,
      },
    ]) +
    stroke('M-13 -5q8 3 13 -5M-9 9q10 -2 14 -12', { pen: 'hair' }) +
    cuff()
  )
}

const cuff = (): string =>
  slab([-50, -8], 8, 24, { fill: 'stone' }) +
  poly(
    [
      [-42, -8],
      [-42, 16],
    ],
    { pen: 1.4 },
  )

/** A fist from the thumb's side, the arm to the left. */
export const fist = (): string =>
  limbs([
    {
      at: [
        [-38, 4],
        [-20, 2],
      ],
      wide: 19,
    },
    {
      at: [
        [-12, -7],
        [4, -9],
        [4, 11],
        [-12, 9],
        [-12, -7],
        [0, 0],
      ],
      wide: 13,
    },
  ]) +
  [-12.6, -4.2, 4.4, 12.8]
    .map((y, i) =>
      limbs([
        {
          at: [
            [-2, y],
            [15 - Math.abs(i - 1.4) * 1.6, y],
          ],
          wide: 7.6,
        },
      ]),
    )
    .join('') +
  limbs([
    {
      at: [
        [-14, -11],
        [0, -18],
        [11, -14.4],
      ],
      wide: 8.4,
    },
  ]) +
  cuff()

/** What a squeeze leaves: a lump with the marks of four fingers. */
export const lump = (): string =>
  limbs(
    (
      [
        [-9, -7, 9, 9],
        [-2.5, -9, 11, 9],
        [4, -9, 11, 9],
        [10, -7, 8, 8],
      ] as const
    ).map(([y, from, to, wide]) => ({
      at: [
        [from, y],
        [to, y],
      ] as Point[],
      wide,
      fill: 'stone' as const,
    })),
  ) + stroke('M-9 -5.8q9 -1.6 17 0M-10 0.8q10 -1.6 20 0M-9 7.2q9 -1.6 17 0', { pen: 0.7 })

/** How an arm of somebody who gives signals ends. */
type Hand = 'open' | 'fist' | 'edge'

export type Arm = {
  /** Elbow and hand, seen from the feet. */
  readonly at: readonly Point[]
  readonly hand: Hand
}

/** A hand at the end of an arm, pointing on from the elbow. */
function handAt([x, y]: Point, [ex, ey]: Point, kind: Hand): string {
  const turned = Math.atan2(y - ey, x - ex)
  const [c, s] = [Math.cos(turned), Math.sin(turned)]
  const on = (along: number, off: number): Point => [
    x + along * c - off * s,
    y + along * s + off * c,
  ]
  if (kind === 'fist') return limbs([{ at: [on(1, 0), on(3, 0)], wide: 8.5 }])
  if (kind === 'edge')
    return limbs([
      {
        at: [
          [x, y],
          [x, y - 12],
        ],
        wide: 4.4,
      },
    ])
  return limbs(
    [
      { at: [on(1, 0), on(3.4, 0)], wide: 7 },
      ...[-3, -1, 1, 3].map((v) => ({
        at: [on(4, v), on(10 - Math.abs(v) * 0.5, v * 1.35)],
        wide: 2,
      })),
      { at: [on(1, -3), on(4.5, -6.4)], wide: 2.4 },
    ],
    0.8,
  )
}

/** Head with a cap from behind, its middle at a place. */
export const headFromBehind = ([x, y]: Point): string =>
  disc([x - 8.4, y + 2], 1.8, { fill: 'paper', pen: 0.8 }) +
  disc([x + 8.4, y + 2], 1.8, { fill: 'paper', pen: 0.8 }) +
  disc([x, y], 8.6, { fill: 'paper' }) +
  stroke(`M${x - 8.8} ${y + 0.5}a8.8 8.8 0 0 1 17.6 0q-8.8 3 -17.6 0Z`, { fill: 'ink', pen: 0.6 }) +
  stroke(`M${x - 3.4} ${y + 1}a3.4 3.2 0 0 1 6.8 0Z`, { fill: 'paper', pen: 0.6 })

/** Head with a cap, its middle at a place. */
const head = ([x, y]: Point): string =>
  disc([x, y], 8.6, { fill: 'paper' }) +
  stroke(`M${x - 8.8} ${y - 2.5}a8.8 8.8 0 0 1 17.6 0Z`, { fill: 'ink', pen: 0.6 }) +
  stroke(`M${x - 9.6} ${y - 2.6}h19.2`, { pen: 2 }) +
  disc([x - 3, y + 1.4], 0.9, { fill: 'ink', pen: 0.1 }) +
  disc([x + 3, y + 1.4], 0.9, { fill: 'ink', pen: 0.1 }) +
  stroke(`M${x - 2.4} ${y + 5.4}h4.8`, { pen: 0.7 })

export const arms = (list: readonly Arm[], shoulder: Point): string =>
  list
    .map(({ at, hand }, i) => {
      const way: Point[] = [[i === 0 ? -shoulder[0] : shoulder[0], shoulder[1]], ...at]
      const [elbow, end] = [way.at(-2) ?? shoulder, way.at(-1) ?? shoulder]
      return limbs([{ at: way, wide: 8 }]) + handAt(end, elbow, hand)
    })
    .join('')

/** Somebody who gives signals, from the front, feet at 0, 0, about 104 high. */
export function signaller(left: Arm, right: Arm): string {
  const leg = (side: number) => ({
    at: [
      [side * 5.5, -42],
      [side * 7, -6],
    ] as Point[],
    wide: 10.5,
  })
  const shoe = (side: number) => ({
    at: [
      [side * 7.5, -2.6],
      [side * 10, -2.6],
    ] as Point[],
    wide: 5.4,
    fill: 'ink' as const,
  })
  const trunk: Point[] = [
    [-6, -63],
    [6, -63],
    [6, -46],
    [-6, -46],
    [-6, -63],
    [6, -46],
  ]
  return [
    limbs([leg(-1), leg(1)]),
    limbs([shoe(-1), shoe(1)]),
    limbs([{ at: trunk, wide: 13.5 }]),
    stroke('M-11.5 -66q11.5 -5 23 0l1 27h-25Z', { fill: 'stone' }),
    stroke('M-5.5 -68l2 29M5.5 -68l-2 29', { pen: 0.7 }),
    stroke('M-12 -51h24', { pen: 2.4 }),
    limbs([
      {
        at: [
          [0, -70],
          [0, -76],
        ],
        wide: 6,
      },
    ]),
    head([0, -83]),
    arms([left, right], [13.5, -67]),
  ].join('')
}

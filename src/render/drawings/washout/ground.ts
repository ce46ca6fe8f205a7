import { dotted, type Field, filled, hatched } from '../fills.ts'
import { line, type Point, poly } from '../ink.ts'

/** A hole in section, and the ground around it; points on the drawing. */
export type Hole = {
  /** Where the drawn ground begins and ends. */
  readonly start: number
  readonly end: number
  /** Edges of the hole at the surface. */
  readonly left: number
  readonly right: number
  readonly top: number
  readonly floor: number
}

/** How far ground is drawn below the hole. */
export const under = 14

/** Firm ground, hatched around the hole. */
const firm = ({ start, end, top, floor }: Hole, hole: readonly Point[]): string =>
  hatched(
    [
      [
        [start, top],
        [end, top],
        [end, floor + under],
        [start, floor + under],
      ],
      hole,
    ],
    60,
    4,
  )

const surface = ({ start, end, left, right, top }: Hole): string =>
  line([start, top], [left, top], { pen: 'bold' }) + line([right, top], [end, top], { pen: 'bold' })

/** Pieces of a thin edge, thrown out by hooves: place along and above the edge, and size. */
const pieces = [
  [-15, 4, 2.6],
  [-9, 8, 2.1],
  [-4, 4, 3],
  [3, 9, 2.4],
  [-21, 9, 2],
] as const

function broken({ top }: Hole, edge: number, inward: 1 | -1, thin: number, deep: number): string {
  const at = (along: number, down: number): Point => [edge + inward * along, top + down]
  const hollow: Field = [
    [at(-1, -0.5), at(thin * 0.3, deep * 0.3), at(thin * 0.6, deep * 0.5), at(thin * 0.85, -0.5)],
  ]
  const stones = pieces.map(([along, up, r]): string => {
    const [x, y] = at(along, -up)
    const outline: readonly Point[] = [
      [x - r, y + r * 0.5],
      [x - r * 0.3, y - r * 0.7],
      [x + r, y - r * 0.2],
      [x + r * 0.5, y + r * 0.7],
      [x - r, y + r * 0.5],
    ]
    return filled([outline], 'stone') + poly(outline, { pen: 'hair' })
  })
  return filled(hollow, 'paper') + poly(hollow.flat(), { pen: 'line' }) + stones.join('')
}

/** The groove as found, filled: its edges break out as far as the fill is thin. */
export function filledAsFound(hole: Hole, thinShare: number): string {
  const { left, right, top, floor } = hole
  const middle = (left + right) / 2
  const groove: readonly Point[] = [
    [left, top],
    [middle, floor],
    [right, top],
  ]
  const thin = (thinShare * (right - left)) / 2
  const deep = thinShare * (floor - top)
  return [
    firm(hole, groove),
    dotted([groove], 3.4, 1.1),
    poly([...groove, [left, top]], { pen: 'line' }),
    surface(hole),
    broken(hole, left, 1, thin, deep),
    broken(hole, right, -1, thin, deep),
  ].join('')
}

/** Where each lift begins, from below. */
export const liftTops = ({ top, floor }: Hole, lifts: number): readonly number[] =>
  Array.from({ length: lifts }, (_, i) => floor - ((floor - top) * (i + 1)) / lifts)

/** The same cut square and filled in lifts, with the cushion over it. */
export function cutSquare(hole: Hole, lifts: number, cushion: number): string {
  const { start, end, left, right, top, floor } = hole
  const cut: readonly Point[] = [
    [left, top],
    [left, floor],
    [right, floor],
    [right, top],
  ]
  const over: Field = [
    [
      [start, top - cushion],
      [end, top - cushion],
      [end, top],
      [start, top],
    ],
  ]
  return [
    firm(hole, cut),
    dotted([cut], 3.4, 1.1),
    ...liftTops(hole, lifts).map((y) => line([left, y], [right, y], { pen: 'line' })),
    filled(over, 'stone'),
    dotted(over, 3, 0.8),
    poly(cut, { pen: 'bold' }),
    surface(hole),
    line([start, top - cushion], [end, top - cushion], { pen: 'line' }),
  ].join('')
}

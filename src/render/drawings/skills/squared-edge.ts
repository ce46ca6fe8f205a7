import { fill } from '../../../model/pattern.ts'
import { entries, holding } from '../../../validate/schemas/words/group.ts'
import { type Cell, cellGrid } from '../cells.ts'
import { type ContextFor, declareDrawing, labels } from '../drawing.ts'
import {
  area,
  disc,
  hatched,
  loose,
  measure,
  type Point,
  poly,
  right,
  sheetOf,
  wrong,
} from '../ink.ts'
import { say } from '../letters.ts'
import { type DrawingSize, drawingWidths } from '../sizes.ts'

const wording = labels('squared-edge', {
  ...entries('slanting', 'square', 'squareShows', 'floor'),
  slantingShows: holding('thin'),
  floorShows: holding('lift'),
})
type Context = ContextFor<typeof wording>

const grids: Readonly<Record<DrawingSize, { readonly wide: number; readonly gap: number }>> = {
  page: { wide: 145, gap: 15 },
  column: { wide: 154, gap: 18 },
  side: { wide: 172, gap: 0 },
}

const [high, deep] = [74, 34]

/** Sound base beside and under a fill whose walls stand `lean` points out at the top. */
function hole([x, y]: Point, wide: number, lean: number, lifts: number): string {
  const top = y + 22
  const [from, to] = [x + wide * 0.2, x + wide * 0.8]
  const fillOut: Point[] = [
    [from, top],
    [to, top],
    [to - lean, top + deep],
    [from + lean, top + deep],
  ]
  const ground: Point[] = [
    [x, top],
    [from, top],
    [from + lean, top + deep],
    [to - lean, top + deep],
    [to, top],
    [x + wide, top],
    [x + wide, top + deep + 14],
    [x, top + deep + 14],
  ]
  const wallAt = (down: number): number => lean * (down / deep)
  return [
    hatched(ground, 5, 0.5),
    area(fillOut, { fill: 'paper', pen: 0.2 }),
    loose(
      from,
      to,
      () => top,
      (at) =>
        lean === 0
          ? top + deep
          : top + Math.min(deep, (Math.min(at - from, to - at) / lean) * deep),
      { every: 16, seed: 3 },
    ),
    ...Array.from({ length: lifts - 1 }, (_, i) => {
      const down = (deep * (i + 1)) / lifts
      return poly(
        [
          [from + wallAt(down), top + down],
          [to - wallAt(down), top + down],
        ],
        { pen: 0.7, dash: '4 2' },
      )
    }),
    poly(ground.slice(0, 6), { pen: 1.5 }),
  ].join('')
}

/** The thin edge that hooves throw out. */
function slanting([x, y]: Point, wide: number): string {
  const top = y + 22
  const from = x + wide * 0.2
  const crumbs = [
    [-2, -6],
    [-8, -11],
    [4, -12],
    [-14, -5],
  ] as const
  return (
    hole([x, y], wide, wide * 0.28, 1) +
    crumbs.map(([a, b]) => disc([from + a, top + b], 1.8, { fill: 'stone' })).join('') +
    wrong([x + wide - 6, y + 8])
  )
}

function draw(context: Context, size: DrawingSize): string {
  const { words, q, si, alt } = context
  const { wide, gap } = grids[size]
  // As many as in the washout of the worked example.
  const lifts = Math.min(4, Math.max(2, Math.round(si('washout.lifts') ?? 2)))
  const cells: Cell[] = [
    {
      picture: (at) => slanting(at, wide),
      name: words.slanting,
      says: fill(words.slantingShows, { thin: q('practice.thin-layer') }),
    },
    {
      picture: (at) => hole(at, wide, 0, lifts) + right([at[0] + wide - 9, at[1] + 9]),
      name: words.square,
      says: words.squareShows,
    },
    {
      picture: ([x, y]) => {
        const top = y + 22
        const step = deep / lifts
        return (
          hole([x, y], wide, 0, lifts) +
          measure([x + wide * 0.74, top + deep - step], [x + wide * 0.74, top + deep]) +
          say([x + wide * 0.5, top + deep - 3], q('practice.washout.lift'), {
            size: 8.6,
            bold: true,
            anchor: 'middle',
            halo: true,
          }) +
          Array.from({ length: lifts }, (_, i) =>
            say([x + wide * 0.25, top + deep - step * i - 3], String(i + 1), {
              size: 8.6,
              bold: true,
              halo: true,
            }),
          ).join('')
        )
      },
      name: words.floor,
      says: fill(words.floorShows, { lift: q('practice.washout.lift') }),
    },
  ]
  const width = drawingWidths[size]
  const { body, height } = cellGrid(cells, { width, picture: [wide, high], gap })
  return sheetOf(width, height, alt, body)
}

/** Why the edges of a patch are cut straight down, and how it is filled. */
export const squaredEdge = declareDrawing({
  name: 'squared-edge',
  labels: wording,
  draw,
  numbers: ({ words, q }) =>
    [
      `${words.slanting}: ${fill(words.slantingShows, { thin: q('practice.thin-layer') })}`,
      `${words.square}: ${words.squareShows}`,
      `${words.floor}: ${fill(words.floorShows, { lift: q('practice.washout.lift') })}`,
    ].join(' '),
})

import { fill } from '../../../model/pattern.ts'
import { entries, holding } from '../../../validate/schemas/words/group.ts'
import { type Cell, cellGrid } from '../cells.ts'
import { type ContextFor, declareDrawing, labels } from '../drawing.ts'
import {
  area,
  arrow,
  disc,
  hatched,
  limbs,
  type Point,
  placed,
  poly,
  right,
  sheetOf,
  slab,
  stroke,
  wrong,
} from '../ink.ts'
import { type DrawingSize, drawingWidths } from '../sizes.ts'

const wording = labels('no-ride', {
  ...entries('seat', 'seatShows', 'load', 'back', 'backShows'),
  loadShows: holding('clear'),
})
type Context = ContextFor<typeof wording>

const grids: Readonly<Record<DrawingSize, { readonly wide: number; readonly gap: number }>> = {
  page: { wide: 145, gap: 15 },
  column: { wide: 154, gap: 18 },
  side: { wide: 172, gap: 0 },
}

/** The pictures are drawn in a frame of 148 by this. */
const high = 88

/** Somebody small, feet at 0, 0, about 34 high. */
const somebody = (): string =>
  limbs([
    {
      at: [
        [0, -22],
        [0, -13],
      ],
      wide: 8,
    },
    {
      at: [
        [-2, -11],
        [-2.4, -1],
      ],
      wide: 4,
    },
    {
      at: [
        [2, -11],
        [2.4, -1],
      ],
      wide: 4,
    },
  ]) + disc([0, -30], 4.4, { fill: 'paper' })

/** A figure that may not be there. */
const nobody = (at: Point): string => placed(at, somebody()) + wrong([at[0], at[1] - 17], 22, 2.4)

const wheel = (x: number, y: number, r: number): string =>
  disc([x, y], r, { fill: 'ink' }) + disc([x, y], r * 0.5, { fill: 'paper', pen: 0.8 })

/** A tractor from the side, going right, and its driver under the roll bar. */
const tractor = (x: number, y: number): string =>
  [
    slab([x + 18, y - 34], 32, 17, { fill: 'stone' }, 2),
    stroke(`M${x + 42} ${y - 34}v-11`, { pen: 2.2 }),
    stroke(`M${x - 9} ${y - 34}v-34h24`, { pen: 2.2 }),
    limbs([
      {
        at: [
          [x + 2, y - 48],
          [x + 2, y - 38],
        ],
        wide: 8,
      },
      {
        at: [
          [x + 3, y - 36],
          [x + 12, y - 33],
          [x + 12, y - 26],
        ],
        wide: 4.4,
      },
      {
        at: [
          [x + 3, y - 46],
          [x + 13, y - 41],
        ],
        wide: 3.4,
      },
    ]),
    disc([x + 3, y - 57], 4.4, { fill: 'paper' }),
    stroke(`M${x + 16} ${y - 32}l-4 -10`, { pen: 1.3 }),
    wheel(x, y - 18, 18),
    wheel(x + 46, y - 9, 9),
  ].join('')

/** One seat, one person: nobody on the tool, the drawbar or the fender. */
function seat([x, y]: Point): string {
  const ground = y + 84
  return [
    poly(
      [
        [x, ground],
        [x + 148, ground],
      ],
      { pen: 1.1 },
    ),
    slab([x + 4, ground - 9], 40, 5, { fill: 'paper' }),
    stroke([10, 18, 26, 34, 40].map((v) => `M${x + v} ${ground - 4}v4`).join(''), { pen: 1.4 }),
    stroke(`M${x + 44} ${ground - 10}H${x + 84}`, { pen: 2 }),
    tractor(x + 94, ground),
    nobody([x + 22, ground - 9]),
    nobody([x + 58, ground - 11]),
    right([x + 116, y + 16]),
  ].join('')
}

/** Nobody under the bucket, nobody in the bed. */
function load([x, y]: Point): string {
  const ground = y + 84
  return [
    poly(
      [
        [x, ground],
        [x + 148, ground],
      ],
      { pen: 1.1 },
    ),
    slab([x + 2, ground - 24], 32, 16, { fill: 'stone' }, 2),
    slab([x + 8, ground - 44], 18, 20, { fill: 'paper', pen: 1.4 }),
    wheel(x + 9, ground - 8, 8),
    wheel(x + 28, ground - 8, 8),
    stroke(`M${x + 4} ${ground - 26}L${x + 16} ${ground - 54}L${x + 64} ${ground - 66}`, {
      pen: 3.4,
    }),
    area(
      [
        [x + 60, ground - 72],
        [x + 80, ground - 66],
        [x + 75, ground - 55],
        [x + 61, ground - 58],
      ],
      { fill: 'paper', pen: 1.3 },
    ),
    slab([x + 66, ground - 20], 76, 4, { fill: 'ink' }),
    area(
      [
        [x + 64, ground - 42],
        [x + 108, ground - 42],
        [x + 105, ground - 20],
        [x + 67, ground - 20],
      ],
      { fill: 'stone' },
    ),
    stroke(`M${x + 112} ${ground - 20}v-30h14l9 15h6v15Z`, { fill: 'paper' }),
    wheel(x + 78, ground - 8, 8),
    wheel(x + 128, ground - 8, 8),
    nobody([x + 48, ground]),
    nobody([x + 94, ground - 36]),
  ].join('')
}

/** From above: nobody in the hatched ground while the tractor comes back to its tool. */
function back([x, y]: Point): string {
  const line = y + 36
  const zone: Point[] = [
    [x + 28, line - 24],
    [x + 144, line - 24],
    [x + 144, line + 24],
    [x + 28, line + 24],
  ]
  const guide: Point = [x + 52, line + 42]
  return [
    hatched(zone, 6, 0.6),
    area(zone, { pen: 1, dash: '4 2' }),
    slab([x, line - 22], 28, 44, { fill: 'paper' }),
    stroke([5, 14, 23].map((v) => `M${x + v} ${line - 18}v36`).join(''), { pen: 1, dash: '3 3' }),
    area(
      [
        [x + 28, line - 9],
        [x + 46, line],
        [x + 28, line + 9],
      ],
      { fill: 'paper' },
    ),
    slab([x + 96, line - 17], 22, 7, { fill: 'ink' }, 1),
    slab([x + 96, line + 10], 22, 7, { fill: 'ink' }, 1),
    slab([x + 99, line - 10], 18, 20, { fill: 'paper' }, 2),
    slab([x + 117, line - 6], 22, 12, { fill: 'paper' }, 2),
    disc([x + 107, line], 4, { fill: 'ink' }),
    arrow([x + 94, line], [x + 78, line], { pen: 1.8 }),
    disc([x + 62, line], 4.4, { fill: 'paper', pen: 1.2 }),
    wrong([x + 62, line], 16, 2.4),
    disc(guide, 3.4, { fill: 'ink' }),
    disc(guide, 6.4),
    stroke(`M${guide[0] + 7} ${guide[1] - 3}L${x + 102} ${line + 5}`, { pen: 1.2, dash: '3 2' }),
    right([guide[0] - 20, guide[1] + 2]),
  ].join('')
}

function draw({ words, q, alt }: Context, size: DrawingSize): string {
  const { wide, gap } = grids[size]
  const scale = wide / 148
  const cell = (picture: (at: Point) => string, name: string, says: string): Cell => ({
    picture: (at) => placed(at, picture([0, 0]), { scale }),
    name,
    says,
  })
  const cells = [
    cell(seat, words.seat, words.seatShows),
    cell(load, words.load, fill(words.loadShows, { clear: q('practice.stand-clear') })),
    cell(back, words.back, words.backShows),
  ]
  const width = drawingWidths[size]
  const { body, height } = cellGrid(cells, { width, picture: [wide, high * scale], gap })
  return sheetOf(width, height, alt, body)
}

/** Where nobody rides or stands: on a tool, under a load, behind a tractor that backs up. */
export const noRide = declareDrawing({
  name: 'no-ride',
  labels: wording,
  draw,
  numbers: ({ words, q }) =>
    [
      `${words.seat}: ${words.seatShows}`,
      `${words.load}: ${fill(words.loadShows, { clear: q('practice.stand-clear') })}`,
      `${words.back}: ${words.backShows}`,
    ].join(' '),
})

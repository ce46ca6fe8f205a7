import { entries } from '../../../validate/schemas/words/group.ts'
import { type Cell, cellGrid } from '../cells.ts'
import { type ContextFor, declareDrawing, labels } from '../drawing.ts'
import { arrow, disc, limbs, type Point, placed, poly, sheetOf, slab, stroke, tip } from '../ink.ts'
import { type DrawingSize, drawingWidths } from '../sizes.ts'
import { type Arm, arms, headFromBehind, signaller } from './people.ts'

const signals = ['stop', 'back', 'gap', 'hold', 'answer'] as const
type Signal = (typeof signals)[number]

const wording = labels(
  'signals',
  entries(
    ...signals,
    ...(['stopShows', 'backShows', 'gapShows', 'holdShows', 'answerShows'] as const),
  ),
)
type Context = ContextFor<typeof wording>

/** A bent arrow around a hand that beckons; `side` -1 at the left. */
function beckon(side: -1 | 1): string {
  const way = Array.from({ length: 12 }, (_, i): Point => {
    const turn = 2.5 + (3.1 * i) / 11
    return [side * (36 - 11 * Math.cos(turn)), -78 + 11 * Math.sin(turn)]
  })
  const feet: Point = [0, 0]
  const [before, end] = [way.at(-2) ?? feet, way.at(-1) ?? feet]
  const angle = Math.atan2(end[1] - before[1], end[0] - before[0])
  return poly(way, { pen: 1.3 }) + tip(end, angle, 6)
}

/** The driver from behind, both hands in the air, between rear tires and over the drawbar. */
function driver(): string {
  const trunk: Point[] = [
    [-6, -62],
    [6, -62],
    [6, -46],
    [-6, -46],
    [-6, -62],
    [6, -46],
  ]
  const hand = (side: number): Arm => ({
    at: [
      [side * 31, -72],
      [side * 31, -88],
    ],
    hand: 'open',
  })
  const tire = (x: number): string =>
    slab([x - 9, -44], 18, 44, { fill: 'ink' }, 5) +
    stroke([-38, -31, -24, -17, -10, -3].map((y) => `M${x - 8} ${y}l8 -4l8 4`).join(''), {
      stroke: 'paper',
      pen: 0.8,
    })
  return [
    limbs([{ at: trunk, wide: 13.5 }]),
    headFromBehind([0, -80]),
    arms([hand(-1), hand(1)], [13, -64]),
    // The roll bar, the seat and the axle are nearer than the driver.
    stroke('M-21 -40V-112h42V-40', { pen: 2.2 }),
    slab([-13, -62], 26, 24, { fill: 'stone' }, 4),
    slab([-22, -36], 44, 16, { fill: 'paper' }, 2),
    tire(-30),
    tire(30),
    slab([-4, -24], 8, 16, { fill: 'paper' }, 1),
    disc([0, -12.5], 1.8, { fill: 'ink', pen: 0.2 }),
  ].join('')
}

/** Each around the feet, at 0, 0. */
const figures: Readonly<Record<Signal, () => string>> = {
  stop: () =>
    signaller(
      {
        at: [
          [-19, -52],
          [-17, -38],
        ],
        hand: 'fist',
      },
      {
        at: [
          [17, -84],
          [18, -101],
        ],
        hand: 'open',
      },
    ),
  back: () =>
    signaller(
      {
        at: [
          [-25, -56],
          [-29, -74],
        ],
        hand: 'open',
      },
      {
        at: [
          [25, -56],
          [29, -74],
        ],
        hand: 'open',
      },
    ) +
    beckon(-1) +
    beckon(1),
  gap: () =>
    signaller(
      {
        at: [
          [-28, -56],
          [-20, -71],
        ],
        hand: 'edge',
      },
      {
        at: [
          [28, -56],
          [20, -71],
        ],
        hand: 'edge',
      },
    ) +
    arrow([-41, -78], [-26, -78], { pen: 1.3 }) +
    arrow([41, -78], [26, -78], { pen: 1.3 }),
  hold: () =>
    signaller(
      {
        at: [
          [-28, -68],
          [-38, -68],
        ],
        hand: 'open',
      },
      {
        at: [
          [28, -68],
          [38, -68],
        ],
        hand: 'open',
      },
    ),
  answer: driver,
}

const grids: Readonly<Record<DrawingSize, { readonly picture: Point; readonly gap: number }>> = {
  page: { picture: [85, 108], gap: 10 },
  column: { picture: [100, 110], gap: 13 },
  side: { picture: [80, 102], gap: 12 },
}

function draw({ words, alt }: Context, size: DrawingSize): string {
  const { picture, gap } = grids[size]
  const scale = Math.min(picture[0] / 100, (picture[1] - 2) / 113)
  const cells = signals.map(
    (name): Cell => ({
      picture: ([x, y]) => {
        const foot = y + picture[1] - 3
        const ground = poly(
          [
            [x, foot],
            [x + picture[0], foot],
          ],
          { pen: 0.9 },
        )
        return ground + placed([x + picture[0] / 2, foot], figures[name](), { scale })
      },
      name: words[name],
      says: words[`${name}Shows`],
    }),
  )
  const width = drawingWidths[size]
  const { body, height } = cellGrid(cells, { width, picture, gap })
  return sheetOf(width, height, alt, body)
}

/** Signals of the one who hitches, as the driver sees them, and the driver's answer. */
export const hitchSignals = declareDrawing({
  name: 'hitch-signals',
  labels: wording,
  draw,
  numbers: ({ words }) =>
    signals.map((name) => `${words[name]}: ${words[`${name}Shows`]}`).join(' '),
})

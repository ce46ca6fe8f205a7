import { entries } from '../../../validate/schemas/words/group.ts'
import { type ContextFor, declareDrawing, labels } from '../drawing.ts'
import { type DrawingSize, drawingWidths } from '../sizes.ts'
import type { Point } from '../svg.ts'
import { type Cell, cellGrid } from './cells.ts'
import { arrow, limbs, placed, poly, sheetOf, slab, stroke, tip } from './ink.ts'
import { arms, head, signaller } from './people.ts'

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

/** The driver at the wheel, both hands in the air, under the roll bar. */
function driver(): string {
  const trunk: Point[] = [
    [-6, -44],
    [6, -44],
    [6, -30],
    [-6, -30],
    [-6, -44],
    [6, -30],
  ]
  const tire = (x: number): string =>
    slab([x - 8, -34], 16, 34, { fill: 'ink' }, 4) +
    stroke([-28, -22, -16, -10, -4].map((y) => `M${x - 7} ${y}l7 -3l7 3`).join(''), {
      stroke: 'paper',
      pen: 0.7,
    })
  return [
    stroke('M-21 -34V-112h42V-34', { pen: 2.2 }),
    limbs([{ at: trunk, wide: 13.5 }]),
    head([0, -64]),
    arms(
      [
        {
          at: [
            [-25, -56],
            [-24, -74],
          ],
          hand: 'open',
        },
        {
          at: [
            [25, -56],
            [24, -74],
          ],
          hand: 'open',
        },
      ],
      [13, -47],
    ),
    stroke('M-16 -30a16 6 0 0 1 32 0', { pen: 2 }),
    slab([-14, -30], 28, 22, { fill: 'paper' }, 2),
    stroke('M-9 -24h18M-9 -19h18M-9 -14h18', { pen: 0.7 }),
    tire(-26),
    tire(26),
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
  page: { picture: [88, 112], gap: 10 },
  column: { picture: [104, 112], gap: 13 },
  side: { picture: [82, 104], gap: 12 },
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
        return ground + placed([x + picture[0] / 2, foot], figures[name](), scale)
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
  sized: true,
  draw,
  numbers: ({ words }) =>
    signals.map((name) => `${words[name]}: ${words[`${name}Shows`]}`).join(' '),
})

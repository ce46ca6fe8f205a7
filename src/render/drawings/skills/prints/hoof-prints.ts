import { entries } from '../../../../validate/schemas/words/group.ts'
import { type Cell, cellGrid } from '../../cells.ts'
import { type ContextFor, declareDrawing, labels } from '../../drawing.ts'
import { arrow, loose, measure, type Point, placed, poly, sheetOf, solid } from '../../ink.ts'
import { say, smallest } from '../../letters.ts'
import { type DrawingSize, drawingWidths } from '../../sizes.ts'
import { inCut, type PrintName, printKinds } from './kinds.ts'
import { foot } from './shoe.ts'

const wording = labels(
  'hoof-prints',
  entries(
    ...(['even', 'crumbled', 'deep', 'hard', 'slid', 'passedOver', 'full'] as const),
    ...(['evenShows', 'crumbledShows', 'deepShows', 'hardShows', 'slidShows'] as const),
    ...(['passedOverShows', 'fullShows', 'letters'] as const),
    ...(['key', 'keyShows', 'heel', 'toe', 'usual'] as const),
  ),
)
type Context = ContextFor<typeof wording>

/** Width of a picture, and room between two, by the width of the drawing. */
const grids: Readonly<Record<DrawingSize, { readonly wide: number; readonly gap: number }>> = {
  page: { wide: 108, gap: 11 },
  column: { wide: 100, gap: 13 },
  side: { wide: 80, gap: 12 },
}

/** Inches that a picture shows: across, of the ground from above, and over the surface cut. */
const [across, planHigh, above] = [10.5, 6.4, 1]

/** How a picture lies: its middle, the surface cut, `u` points an inch. */
type Lay = {
  readonly at: Point
  readonly wide: number
  readonly u: number
  readonly surface: number
  /** Inches. */
  readonly cushion: number
}

const inchesOf = ({ si }: Context, name: string, without: number): number =>
  (si(name) ?? without * 0.0254) / 0.0254

/** How deep a usual print and the cushion are here, in inches; a usual one where nobody has said. */
const depths = (context: Context) => ({
  usual: inchesOf(context, 'practice.print-depth', 0.5),
  cushion: inchesOf(context, 'cushion.depth.target', 1.25),
})

/** Cushion and base under a surface of points, from edge to edge of the picture. */
function earth({ at: [x], wide, u, surface, cushion }: Lay, cut: readonly Point[]): string {
  const edge: Point[] = [[x, surface], ...cut, [x + wide, surface]]
  const floor = surface + cushion * u
  const topAt = (place: number): number => {
    const i = edge.findIndex((p) => p[0] >= place)
    const [a, b] = [edge[i - 1], edge[i]]
    if (!a || !b || b[0] === a[0]) return b?.[1] ?? surface
    return a[1] + ((b[1] - a[1]) * (place - a[0])) / (b[0] - a[0])
  }
  return (
    loose(x, x + wide, topAt, () => floor, { every: 9, seed: 4 }) +
    solid([
      [x, floor],
      [x + wide, floor],
    ]) +
    poly(edge, { pen: 1.6 })
  )
}

/** The middle of a print in its picture. */
const middleOf = ({ at: [x, y], wide, u }: Lay, off = 0): Point => [
  x + wide / 2 + off * u,
  y + (planHigh / 2) * u,
]

/** One kind of print from above, and cut from heel to toe below it. */
function print(name: PrintName, lay: Lay, usual: number): string {
  const { plan, cut, off } = printKinds[name]
  const { u, surface, cushion, at, wide } = lay
  const middle = middleOf(lay, off)
  const floor = cut(usual).map(
    ([along, down]): Point => [
      Math.max(at[0], Math.min(at[0] + wide, middle[0] + along * u)),
      surface + Math.min(down, cushion) * u,
    ],
  )
  return placed(middle, plan(u)) + earth(lay, floor) + inCut(name, u, [middle[0], surface])
}

/** How to read the others: heel and toe, the way of the horse, cushion and base. */
function key(lay: Lay, { words, q }: Context, usual: number): string {
  const { u, surface } = lay
  const [x, y] = middleOf(lay)
  const [from, to] = [x - 2.3 * u, x + 2.6 * u]
  const floor = surface + usual * u
  return [
    placed([x, y], poly([...foot(u), ...foot(u).slice(0, 1)], { pen: 0.8, dash: '3 2' })),
    say([x - 2.9 * u, y + 3], words.heel, { anchor: 'end', size: smallest }),
    say([x + 2.85 * u, y + 3], words.toe, { size: smallest }),
    arrow([x - 1.3 * u, y], [x + 1.7 * u, y], { pen: 1.4 }),
    earth(lay, [
      [from, surface],
      [from, floor],
      [to, floor],
      [to, surface],
    ]),
    measure([x, surface], [x, floor]),
    say([x, surface - 4], q('practice.print-depth'), {
      anchor: 'middle',
      size: smallest,
      bold: true,
    }),
  ].join('')
}

const order = Object.keys(printKinds) as readonly PrintName[]

/** In what order the prints stand that a learner is to name. */
const mixed: readonly PrintName[] = [
  'deep',
  'full',
  'even',
  'slid',
  'crumbled',
  'passedOver',
  'hard',
]

const layFor = (context: Context, size: DrawingSize) => {
  const { wide, gap } = grids[size]
  const u = wide / across
  const { usual, cushion } = depths(context)
  const lay = (at: Point): Lay => ({
    at,
    wide,
    u,
    cushion,
    surface: at[1] + (planHigh + above) * u,
  })
  const high = (planHigh + above + cushion) * u + 10
  return { lay, usual, grid: { width: drawingWidths[size], picture: [wide, high] as const, gap } }
}

function draw(context: Context, size: DrawingSize): string {
  const { words, alt } = context
  const { lay, usual, grid } = layFor(context, size)
  const cells: Cell[] = [
    ...order.map((name) => ({
      picture: (at: Point) => print(name, lay(at), usual),
      name: words[name],
      says: words[`${name}Shows`],
    })),
    {
      picture: (at) => key(lay(at), context, usual),
      name: words.key,
      says: words.keyShows,
    },
  ]
  const { body, height } = cellGrid(cells, grid)
  return sheetOf(grid.width, height, alt, body)
}

/** The same without names, in another order, each under a letter. */
function drawMixed(context: Context, size: DrawingSize): string {
  const { words, alt } = context
  const { lay, usual, grid } = layFor(context, size)
  const cells = mixed.map((name, i) => ({
    picture: (at: Point) => print(name, lay(at), usual),
    name: words.letters.split(' ')[i] ?? '',
    says: '',
  }))
  const { body, height } = cellGrid(cells, grid)
  return sheetOf(grid.width, height, alt, body)
}

/** Hoof prints as they are read: what each shows, and how deep a usual one is here. */
export const hoofPrints = declareDrawing({
  name: 'hoof-prints',
  labels: wording,
  draw,
  numbers: ({ words, q }) =>
    [
      ...order.map((name) => `${words[name]}: ${words[`${name}Shows`]}`),
      `${words.usual} ${q('practice.print-depth')}.`,
    ].join(' '),
})

/** To be named by a learner; its words tell what is seen, not what it is called. */
export const hoofPrintsMixed = declareDrawing({
  name: 'hoof-prints-mixed',
  labels: wording,
  draw: drawMixed,
  numbers: ({ words }) =>
    mixed.map((name, i) => `${words.letters.split(' ')[i]}: ${words[`${name}Shows`]}`).join(' '),
})

import { fill } from '../../../model/pattern.ts'
import { entries, holding } from '../../../validate/schemas/words/group.ts'
import { type Cell, cellGrid } from '../cells.ts'
import { type ContextFor, declareDrawing, labels } from '../drawing.ts'
import {
  area,
  arrow,
  disc,
  line,
  loose,
  measure,
  type Point,
  poly,
  right,
  sheetOf,
  slab,
  solid,
  stroke,
  wrong,
} from '../ink.ts'
import { say, smallest } from '../letters.ts'
import { type DrawingSize, drawingWidths } from '../sizes.ts'

const wording = labels('ridge', {
  ...entries('dam', 'open', 'openShows', 'above', 'aboveShows', 'lowest'),
  damShows: holding('height', 'width', 'factor'),
})
type Context = ContextFor<typeof wording>

const grids: Readonly<Record<DrawingSize, { readonly wide: number; readonly gap: number }>> = {
  page: { wide: 145, gap: 15 },
  column: { wide: 154, gap: 18 },
  side: { wide: 172, gap: 0 },
}

/** Height of the ridge as drawn, and of the whole picture. */
const [ridgeHigh, high] = [22, 86]

/** How the section lies: the foot of the rail, points in a meter across, and heights enlarged. */
type Lay = {
  readonly x: number
  readonly foot: number
  readonly wide: number
  /** How far the water stands out, points. */
  readonly reach: number
  /** How many times heights are drawn larger than widths. */
  readonly factor: number
}

/** Where water is level with a ridge, the slope rises by its height from the rail to there. */
function layOf({ si }: Context, wide: number, [x, y]: Point): Lay {
  const height = si('ridge.taken') ?? 0.02
  const width = si('ridge.dam-width') ?? height / 0.02
  const reach = (wide - 46) * 0.6
  return {
    x: x + 44,
    foot: y + high - 26,
    wide: wide - 46,
    reach,
    factor: Math.round((ridgeHigh * width) / (height * reach)),
  }
}

const surfaceAt = ({ x, foot, reach }: Lay, at: number): number =>
  foot - (ridgeHigh * (at - x)) / reach

/** Cushion and base under the slope, and the rail at its foot. */
function slope(lay: Lay): string {
  const { x, wide } = lay
  const [a, b]: [Point, Point] = [
    [x, surfaceAt(lay, x)],
    [x + wide, surfaceAt(lay, x + wide)],
  ]
  const down = ([px, py]: Point): Point => [px, py + 14]
  return [
    loose(
      x,
      x + wide,
      (at) => surfaceAt(lay, at),
      (at) => surfaceAt(lay, at) + 14,
      { seed: 6 },
    ),
    solid([down(a), down(b)]),
    poly([a, b], { pen: 1.5 }),
    slab([x - 6, lay.foot - 40], 4, 42, { fill: 'paper' }, 2),
  ].join('')
}

const ridgeShape = (lay: Lay): string => {
  const { x, foot } = lay
  return `M${x} ${foot}L${x + 4} ${foot - ridgeHigh * 0.8}Q${x + 11} ${foot - ridgeHigh * 1.2} ${x + 18} ${foot - ridgeHigh * 0.9}L${x + 30} ${surfaceAt(lay, x + 30)}Z`
}

/** Water level with the top of the ridge. */
function dammed(lay: Lay): string {
  const { x, foot, reach } = lay
  const top = foot - ridgeHigh
  const rows = [5, 10, 15].map((down) => {
    const to = x + reach * (1 - down / ridgeHigh) - 4
    return to > x + 30 ? `M${x + 26 + down} ${top + down}H${to}` : ''
  })
  return [
    slope(lay),
    area(
      [
        [x + 12, top],
        [x + reach, top],
        [x + 30, surfaceAt(lay, x + 30)],
      ],
      { fill: 'paper', pen: 0.3 },
    ),
    stroke(rows.join(''), { pen: 0.7, dash: '8 4' }),
    stroke(ridgeShape(lay), { fill: 'stone', pen: 1.5 }),
    poly(
      [
        [x + 14, top],
        [x + reach, top],
      ],
      { pen: 1.2 },
    ),
    poly(
      [
        [x + reach, top],
        [x + reach, foot + 22],
      ],
      { pen: 0.5, dash: '2 2' },
    ),
    measure([x, foot + 20], [x + reach, foot + 20]),
  ].join('')
}

/** The same slope with the ridge cut through: water runs out under the rail. */
function opened(lay: Lay): string {
  const { x, foot, wide } = lay
  const run = [0.86, 0.6, 0.34].map((at) => {
    const from = x + wide * at + 14
    const to = x + wide * at - 8
    return arrow([from, surfaceAt(lay, from) - 5], [to, surfaceAt(lay, to) - 5], { pen: 1.1 }, 5)
  })
  return [
    slope(lay),
    stroke(ridgeShape(lay), { pen: 0.9, dash: '2 2' }),
    ...run,
    arrow([x + 16, surfaceAt(lay, x + 16) - 4], [x - 11, foot + 1], { pen: 1.3 }, 5),
  ].join('')
}

/** From above: the ridge along the rail with its openings, one of them beside a drain. */
function fromAbove({ manual, words }: Context, wide: number, [x, y]: Point): string {
  const drain = manual.geometry.marks.find((m) => m.kind === 'drain')
  const [top, thick, gap] = [y + 40, 16, 12]
  const cuts = [x + wide * 0.26, x + wide * 0.76]
  const ends = [x, ...cuts.flatMap((c) => [c - gap / 2, c + gap / 2]), x + wide]
  const pieces = [0, 2, 4].map((i) => {
    const [from = x, to = x] = [ends[i], ends[i + 1]]
    return (
      slab([from, top], to - from, thick, { fill: 'stone' }) +
      loose(
        from,
        to,
        () => top,
        () => top + thick,
        { seed: 9 + i },
      )
    )
  })
  const posts = Array.from({ length: 9 }, (_, i) => x + 8 + (i * (wide - 16)) / 8)
    .filter((at) => cuts.every((c) => Math.abs(c - at) > 9))
    .map((at) => disc([at, top + thick + 5], 2, { fill: 'paper' }))
  const runs = cuts.flatMap((c) => [
    ...[-24, 24].map((off) =>
      arrow([c + off, top - 20], [c + off * 0.16, top - 1], { pen: 0.9 }, 4.5),
    ),
    arrow([c, top + 3], [c, top + thick + 14], { pen: 1.5 }, 5),
  ])
  const second = cuts[1] ?? x
  const grate =
    disc([second, top + thick + 20], 5.5, { fill: 'paper' }) +
    stroke(`M${second - 5} ${top + thick + 20}h10M${second} ${top + thick + 15}v10`, { pen: 0.7 })
  return [
    ...pieces,
    ...posts,
    ...runs,
    say([cuts[0] ?? x, top + thick + 24], words.lowest, { size: smallest, anchor: 'middle' }),
    drain === undefined
      ? ''
      : grate + say([second - 9, top + thick + 24], drain.name, { size: smallest, anchor: 'end' }),
  ].join('')
}

function draw(context: Context, size: DrawingSize): string {
  const { words, q, alt } = context
  const { wide, gap } = grids[size]
  const { factor } = layOf(context, wide, [0, 0])
  const cells: Cell[] = [
    {
      picture: (at) => {
        const lay = layOf(context, wide, at)
        const { x, foot, reach } = lay
        return (
          dammed(lay) +
          wrong([at[0] + wide - 5, at[1] + 6]) +
          say([x + reach / 2, foot + 17], q('ridge.dam-width'), {
            size: 8.6,
            bold: true,
            anchor: 'middle',
            halo: true,
          }) +
          line([x - 13, foot - ridgeHigh], [x + 12, foot - ridgeHigh], { dash: '2 2' }) +
          line([x - 13, foot], [x, foot], { dash: '2 2' }) +
          measure([x - 11, foot], [x - 11, foot - ridgeHigh]) +
          say([x - 15, foot - ridgeHigh / 2 + 3], q('ridge.taken'), {
            size: 8.6,
            bold: true,
            anchor: 'end',
          })
        )
      },
      name: words.dam,
      says: saidOfDam(context, factor),
    },
    {
      picture: (at) => opened(layOf(context, wide, at)) + right([at[0] + wide - 9, at[1] + 7]),
      name: words.open,
      says: words.openShows,
    },
    {
      picture: (at) => fromAbove(context, wide, at),
      name: words.above,
      says: words.aboveShows,
    },
  ]
  const width = drawingWidths[size]
  const { body, height } = cellGrid(cells, { width, picture: [wide, high], gap })
  return sheetOf(width, height, alt, body)
}

const saidOfDam = ({ words, q }: Context, factor: number): string =>
  fill(words.damShows, { height: q('ridge.taken'), width: q('ridge.dam-width'), factor })

/** A ridge at the rail dams the rain; an opening through it lets the water run. */
export const ridge = declareDrawing({
  name: 'ridge',
  labels: wording,
  needs: 'ridge.dam-width',
  draw,
  numbers: (context) => {
    const { words } = context
    const { factor } = layOf(context, grids.page.wide, [0, 0])
    return [
      `${words.dam}: ${saidOfDam(context, factor)}`,
      `${words.open}: ${words.openShows}`,
      `${words.above}: ${words.aboveShows}`,
    ].join(' ')
  },
})

import { fill } from '../../../model/pattern.ts'
import { entries, holding } from '../../../validate/schemas/words/group.ts'
import { slanted } from '../boxes.ts'
import { type Cell, cellGrid } from '../cells.ts'
import { type ContextFor, declareDrawing, labels } from '../drawing.ts'
import {
  arrow,
  line,
  measure,
  type Point,
  poly,
  right,
  sheetOf,
  slab,
  stroke,
  wrong,
} from '../ink.ts'
import { say, smallest, widthOf } from '../letters.ts'
import { type DrawingSize, drawingWidths } from '../sizes.ts'

const wording = labels('overlap', {
  ...entries('done', 'harrow', 'beside', 'besideShows', 'screen'),
  harrowShows: holding('overlap'),
  screenShows: holding('overlap'),
})
type Context = ContextFor<typeof wording>

/** How much one lap lies over the last, as printed; empty where the facility has no such tool. */
const overlaps = ({ q }: Context): { readonly harrow: string; readonly screen: string } => ({
  harrow: q('gear.harrow.overlap'),
  screen: q('gear.screen.overlap'),
})

const grids: Readonly<Record<DrawingSize, { readonly wide: number; readonly gap: number }>> = {
  page: { wide: 143, gap: 18 },
  column: { wide: 155, gap: 16 },
  side: { wide: 172, gap: 0 },
}
const high = 84

/** Where the last lap ends, and how wide a tool is; points down the picture. */
const [edge, tool, over] = [36, 38, 9]

/** Marks that a tool has left, from one place to another. */
const marks = (from: number, to: number, top: number, bottom: number): string =>
  stroke(
    Array.from(
      { length: Math.floor((bottom - top) / 3.6) },
      (_, i) => `M${from} ${top + 2 + i * 3.6}H${to}`,
    ).join(''),
    { pen: 'hair' },
  )

/** Prints that no tool has passed. */
const prints = (places: readonly Point[]): string =>
  stroke(places.map(([x, y]) => `M${x} ${y}m-3 -2.6a3 2.6 0 1 1 0 5.2`).join(''), { pen: 0.9 })

/** The tool from above, with what pulls it. */
function pulled([x, y]: Point, kind: 'harrow' | 'screen'): string {
  const teeth = Array.from({ length: 7 }, (_, i) => y + 3 + (i * (tool - 6)) / 6)
  const mesh = [0.25, 0.5, 0.75].map((part) => `M${x + 14 * part} ${y}v${tool}`)
  return [
    slab([x, y], 14, tool, { fill: 'paper', pen: 1.2 }),
    kind === 'harrow'
      ? stroke(teeth.map((t) => `M${x + 3} ${t}h4M${x + 8.5} ${t + 2}h3`).join(''), { pen: 1.1 })
      : stroke(`${mesh.join('')}${teeth.map((t) => `M${x} ${t}h14`).join('')}`, { pen: 'hair' }),
    poly(
      [
        [x + 14, y + 5],
        [x + 24, y + tool / 2],
        [x + 14, y + tool - 5],
      ],
      { pen: 0.8 },
    ),
    arrow([x + 26, y + tool / 2], [x + 42, y + tool / 2], { pen: 1.6 }, 7),
  ].join('')
}

/** The last lap above, the tool on its lap below it, `by` over the edge of the last (or beside it). */
function laps([x, y]: Point, wide: number, by: number, kind: 'harrow' | 'screen'): string {
  const [top, at] = [y + edge - by, x + wide * 0.5]
  const isOver = by > 0
  const strip: readonly Point[] = [0.08, 0.3, 0.52, 0.74].map((part) => [
    x + wide * part,
    y + edge - by / 2,
  ])
  return [
    slab([x, y + 4], wide, edge - 4, { fill: 'stone', stroke: 'none' }),
    slab([x, top], at - x, tool, { fill: 'stone', stroke: 'none' }),
    marks(x, x + wide, y + 4, y + edge),
    marks(x, at, top, top + tool),
    isOver ? slanted([x, top], [at - x, by], 2.6) : prints(strip),
    line([x, y + edge], [x + wide, y + edge], { pen: 0.8, dash: '4 2.5' }),
    pulled([at, top], kind),
    isOver ? right([x + wide - 10, y + high - 8]) : wrong([x + wide - 6, y + high - 8]),
  ].join('')
}

function cellsOf(context: Context, wide: number): readonly Cell[] {
  const { words } = context
  const { harrow, screen } = overlaps(context)
  const measured = ([x, y]: Point, said: string): string =>
    measure([x + wide * 0.9, y + edge - over], [x + wide * 0.9, y + edge]) +
    say([x + wide * 0.9 - 4, y + edge - 1.5], said, {
      anchor: 'end',
      size: smallest,
      bold: true,
      halo: true,
    }) +
    slab([x, y + 4], widthOf(words.done, smallest) + 6, 13, { fill: 'paper', stroke: 'none' }) +
    say([x + 2, y + 14], words.done, { size: smallest })
  const good = (kind: 'harrow' | 'screen', said: string, says: string): Cell => ({
    picture: (at) => laps(at, wide, over, kind) + measured(at, said),
    name: words[kind],
    says,
  })
  return [
    ...(harrow === ''
      ? []
      : [good('harrow', harrow, fill(words.harrowShows, { overlap: harrow }))]),
    {
      picture: (at) => laps(at, wide, -9, harrow === '' ? 'screen' : 'harrow'),
      name: words.beside,
      says: words.besideShows,
    },
    ...(screen === ''
      ? []
      : [good('screen', screen, fill(words.screenShows, { overlap: screen }))]),
  ]
}

function draw(context: Context, size: DrawingSize): string {
  const { harrow, screen } = overlaps(context)
  if (harrow === '' && screen === '') return ''
  const { wide, gap } = grids[size]
  const width = drawingWidths[size]
  const { body, height } = cellGrid(cellsOf(context, wide), { width, picture: [wide, high], gap })
  return sheetOf(width, height, context.alt, body)
}

/** A lap over the edge of the last, and one beside it, which leaves a strip. */
export const overlap = declareDrawing({
  name: 'overlap',
  labels: wording,
  draw,
  numbers: (context) =>
    cellsOf(context, 100)
      .map(({ name, says }) => `${name}: ${says}`)
      .join(' '),
})

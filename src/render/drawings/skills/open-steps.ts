import { fill } from '../../../model/pattern.ts'
import { entries, holding } from '../../../validate/schemas/words/group.ts'
import { type Cell, cellGrid } from '../cells.ts'
import { type ContextFor, declareDrawing, labels } from '../drawing.ts'
import { arrow, disc, measure, type Point, poly, sheetOf, slab, stroke, wrong } from '../ink.ts'
import { say, smallest } from '../letters.ts'
import { type DrawingSize, drawingWidths } from '../sizes.ts'
import { type Cut, harrow, inches, layers, waves } from './earth.ts'

const wording = labels('open-steps', {
  ...entries(
    'shut',
    'firstShows',
    'nextShows',
    'lastShows',
    'stop',
    'stopShows',
    'skin',
    'outside',
  ),
  shutShows: holding('look'),
  first: holding('depth'),
  next: holding('step'),
  last: holding('depth'),
})
type Context = ContextFor<typeof wording>

const grids: Readonly<Record<DrawingSize, { readonly wide: number; readonly gap: number }>> = {
  page: { wide: 83, gap: 12 },
  column: { wide: 100, gap: 13 },
  side: { wide: 80, gap: 12 },
}

/** Depths in inches: of each scratching, of the cushion. */
function depthsOf({ si }: Context) {
  const of = (name: string, without: number): number => inches(si(name) ?? without * 0.0254)
  const [first, step] = [of('practice.reopen.depth', 0.25), of('practice.harrow.step', 0.25)]
  const last = of('practice.harrow.depth', 0.75)
  const cushion = of('cushion.depth.target', 1.25)
  return { first, next: Math.min(first + step, last), last, cushion }
}

type Lay = Cut & { readonly u: number }

/** The shut skin: dark, at a depth, from edge to edge. */
const skin = ({ x, wide, surface }: Lay, down: number): string =>
  poly(
    [
      [x, surface + down],
      [x + wide, surface + down],
    ],
    { pen: 2.4, stroke: 'earth' },
  )

/** Sealed and wet: water shines on it. */
function shut(lay: Lay): string {
  const { x, wide, surface } = lay
  const shine = [0.15, 0.42, 0.7].map((at) => {
    const from = x + wide * at
    return `M${from} ${surface - 5}h10M${from + 4} ${surface - 9}h7`
  })
  return layers(lay) + skin(lay, 2.2) + stroke(shine.join(''), { pen: 0.9 })
}

/** Scratched down to a depth; below it the skin is still shut. */
function scratched(lay: Lay, depth: number, isLast: boolean): string {
  const { x, wide, surface, u } = lay
  const down = depth * u
  const top = surface - 20
  return [
    layers(lay, waves(x, x + wide, surface)),
    isLast ? '' : skin(lay, down + 2),
    harrow(x + 4, top, wide - 24, surface + down, 4),
    arrow([x + wide - 17, top + 2.5], [x + wide - 2, top + 2.5], { pen: 1.2 }, 5),
  ].join('')
}

/** How deep the teeth go, at the right edge: from a depth to a depth in inches. */
function deep({ x, wide, surface, u }: Lay, [from, to]: Point, text: string): string {
  const at = x + wide - 6
  return (
    measure([at, surface + from * u], [at, surface + to * u]) +
    say([x + wide, surface - 4], text, { size: smallest, bold: true, anchor: 'end' })
  )
}

/** The name of the skin, under it. */
const skinName = ({ x, surface }: Lay, down: number, name: string): string =>
  say([x + 2, surface + down + 10], name, { size: smallest, halo: true })

/** Clods ride on the surface behind the teeth. */
function clods(lay: Lay, depth: number): string {
  const { x, wide, surface } = lay
  const lumps = [0.12, 0.3, 0.52, 0.78].map((at, i) =>
    disc([x + wide * at, surface - 4 - (i % 2) * 1.5], 4 + (i % 2) * 1.4, { fill: 'stone' }),
  )
  return scratched(lay, depth, false) + lumps.join('') + wrong([x + wide - 9, surface - 28])
}

/** Which step it is, in a ring. */
const stepNumber = ([x, y]: Point, step: number): string =>
  disc([x + 6, y + 6], 5.6, { fill: 'paper' }) +
  say([x + 6, y + 9], String(step), { size: 9, bold: true, anchor: 'middle' })

const said = ({ words, q }: Context) => ({
  shut: fill(words.shutShows, { look: q('practice.reopen.look') }),
  first: fill(words.first, { depth: q('practice.reopen.depth') }),
  next: fill(words.next, { step: q('practice.harrow.step') }),
  last: fill(words.last, { depth: q('practice.harrow.depth') }),
})

function draw(context: Context, size: DrawingSize): string {
  const { words, q, alt } = context
  const { wide, gap } = grids[size]
  const { first, next, last, cushion } = depthsOf(context)
  const u = Math.min(18, 48 / cushion)
  const layAt = ([x, y]: Point): Lay => ({
    x,
    wide,
    u,
    surface: y + 36,
    base: y + 36 + cushion * u,
  })
  const { shut: wait, ...heads } = said(context)
  const cells: Cell[] = [
    {
      picture: (at) => shut(layAt(at)) + skinName(layAt(at), 2.2, words.skin),
      name: words.shut,
      says: wait,
    },
    {
      picture: (at) =>
        scratched(layAt(at), first, false) +
        skinName(layAt(at), first * u + 2, words.skin) +
        deep(layAt(at), [0, first], q('practice.reopen.depth')),
      act: words.outside,
      name: heads.first,
      says: words.firstShows,
    },
    {
      picture: (at) =>
        scratched(layAt(at), next, false) +
        deep(layAt(at), [first, next], `+${q('practice.harrow.step')}`),
      name: heads.next,
      says: words.nextShows,
    },
    {
      picture: (at) =>
        scratched(layAt(at), last, true) + deep(layAt(at), [0, last], q('practice.harrow.depth')),
      name: heads.last,
      says: words.lastShows,
    },
    {
      // No step, but what ends them: in a frame.
      picture: (at) =>
        clods(layAt(at), next) +
        slab([at[0] + 0.8, at[1]], wide - 1.6, 36 + cushion * u + 8, { pen: 1.6 }),
      name: words.stop,
      says: words.stopShows,
    },
  ]
  const numbered = cells.map(
    (cell, i): Cell => ({
      ...cell,
      picture: (at) => cell.picture(at) + (i < 4 ? stepNumber(at, i + 1) : ''),
    }),
  )
  const width = drawingWidths[size]
  const picture: Point = [wide, 36 + cushion * u + 10]
  const { body, height } = cellGrid(numbered, { width, picture, gap })
  return sheetOf(width, height, alt, body)
}

/** A sealed track opened a little deeper each time, and when to stop. */
export const openSteps = declareDrawing({
  name: 'open-steps',
  labels: wording,
  draw,
  numbers: (context) => {
    const { words } = context
    const { shut: wait, first, next, last } = said(context)
    return [
      `${words.shut}: ${wait}`,
      `${first}: ${words.firstShows} ${words.outside}.`,
      `${next}: ${words.nextShows}`,
      `${last}: ${words.lastShows}`,
      `${words.stop}: ${words.stopShows}`,
    ].join(' ')
  },
})

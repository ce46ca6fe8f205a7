import { fill } from '../../../model/pattern.ts'
import { entries, holding } from '../../../validate/schemas/words/group.ts'
import { type Cell, cellGrid } from '../cells.ts'
import { type ContextFor, declareDrawing, labels } from '../drawing.ts'
import {
  area,
  arrow,
  leader,
  measure,
  type Point,
  poly,
  right,
  scatter,
  sheetOf,
  slab,
  wrong,
} from '../ink.ts'
import { say, smallest } from '../letters.ts'
import { type DrawingSize, drawingWidths } from '../sizes.ts'
import { type Cut, harrow, inches, layers, tooth, waves } from './earth.ts'

const wording = labels('teeth', {
  ...entries(
    ...(['good', 'shallow', 'shallowShows', 'deep', 'deepShows', 'plank', 'short'] as const),
    ...(['plankShows', 'teeth', 'print'] as const),
  ),
  goodShows: holding('step'),
})
type Context = ContextFor<typeof wording>

/** Depths in inches; a usual value where the facility says nothing. */
function depthsOf({ si }: Context) {
  const of = (name: string, without: number): number => inches(si(name) ?? without * 0.0254)
  const cushion = of('cushion.depth.target', 1.25)
  const print = of('practice.print-depth', 0.5)
  return { cushion, print, teeth: of('practice.harrow.depth', 0.75) }
}

const grids: Readonly<Record<DrawingSize, { readonly wide: number; readonly gap: number }>> = {
  page: { wide: 108, gap: 11 },
  column: { wide: 155, gap: 16 },
  side: { wide: 172, gap: 0 },
}

type Case = 'good' | 'shallow' | 'deep'

/** How a picture lies: its ground, and points in an inch of depth. */
type Lay = Cut & { readonly u: number }

/** Stones that teeth have brought up out of the base. */
function stones({ x, surface }: Lay): string {
  const random = scatter(12)
  return Array.from({ length: 6 }, (_, i) => {
    const [a, b, s] = [
      x + 4 + i * 9 + random() * 4,
      surface - 3 + random() * 12,
      2 + random() * 1.4,
    ]
    return area(
      [
        [a - s, b + s * 0.3],
        [a - s * 0.3, b - s],
        [a + s, b - s * 0.3],
        [a + s * 0.6, b + s * 0.8],
      ],
      { fill: 'paper' },
    )
  }).join('')
}

/** A print ahead of the harrow, waves behind it; what the teeth leave of a print. */
function pass(which: Case, lay: Lay, depths: ReturnType<typeof depthsOf>): string {
  const { x, wide, surface, u, base } = lay
  const { print, teeth } = depths
  const tip = { good: teeth, shallow: print * 0.5, deep: depths.cushion + 0.3 }[which]
  const [from, to] = [x + wide * 0.7, x + wide * 0.95]
  const floor = Math.min(base, surface + print * u)
  const edge: Point[] = [
    ...waves(x, x + wide * 0.52, surface),
    [from, surface],
    [from, floor],
    [to, floor],
    [to, surface],
  ]
  const left: Point[] = [
    [x + 5, surface + tip * u],
    [x + 5, floor],
    [x + wide * 0.3, floor],
    [x + wide * 0.3, surface + tip * u],
  ]
  const top = surface - 22
  return [
    layers(lay, edge),
    which === 'shallow' ? area(left, { fill: 'paper', dash: '2 1.5' }) : '',
    harrow(x + wide * 0.08, top, wide * 0.42, surface + tip * u),
    arrow([x + wide * 0.52, top + 2.5], [x + wide * 0.66, top + 2.5], { pen: 1.2 }),
    which === 'deep' ? stones(lay) : '',
    which === 'good' ? right([x + wide - 9, top + 3]) : wrong([x + wide - 5, top + 1]),
  ].join('')
}

/** Tooth and print measured, in the first picture alone. */
function measures({ x, wide, surface, u }: Lay, { print, teeth }: ReturnType<typeof depthsOf>) {
  const at = x + wide * 0.57
  return (
    measure([at, surface], [at, surface + teeth * u]) +
    measure([x + wide * 0.825, surface], [x + wide * 0.825, surface + print * u])
  )
}

/** The harrow set down on a plank: one tooth is short. */
function onPlank({ x, wide, surface }: Lay): string {
  const y = surface + 6
  const top = y - 28
  const at = (i: number): number => x + 12 + (i * (wide - 24)) / 6
  return [
    slab([x + 4, top], wide - 8, 5, { fill: 'paper' }),
    ...Array.from({ length: 7 }, (_, i) => tooth(at(i), top + 5, i === 4 ? y - 6 : y)),
    slab([x, y], wide, 6, { fill: 'stone' }),
    poly([
      [x, y + 6],
      [x + wide, y + 6],
    ]),
    leader([at(4) - 14, y + 15], [at(4), y - 5]),
  ].join('')
}

function draw(context: Context, size: DrawingSize): string {
  const { words, q, alt } = context
  const { wide, gap } = grids[size]
  const depths = depthsOf(context)
  const u = Math.min(17, 48 / depths.cushion)
  const high = 30 + depths.cushion * u + 12
  const layAt = ([x, y]: Point): Lay => ({
    x,
    wide,
    u,
    surface: y + 32,
    base: y + 32 + depths.cushion * u,
  })
  const cell = (which: Case, says: string): Cell => ({
    picture: (at) => pass(which, layAt(at), depths),
    name: words[which],
    says,
  })
  const good: Cell = {
    ...cell('good', fill(words.goodShows, { step: q('practice.harrow.step') })),
    picture: (at) => {
      const lay = layAt(at)
      return [
        pass('good', lay, depths),
        measures(lay, depths),
        say([lay.x + wide * 0.68, lay.surface - 4], q('practice.harrow.depth'), {
          size: smallest,
          bold: true,
          anchor: 'end',
          halo: true,
        }),
        say([lay.x + wide, lay.surface - 4], q('practice.print-depth'), {
          size: smallest,
          anchor: 'end',
          halo: true,
        }),
      ].join('')
    },
  }
  const plank: Cell = {
    picture: (at) => {
      const lay = layAt(at)
      return onPlank(lay) + say([lay.x, lay.surface + 26], words.short, { size: smallest })
    },
    name: words.plank,
    says: words.plankShows,
  }
  const cells = [good, cell('shallow', words.shallowShows), cell('deep', words.deepShows), plank]
  const width = drawingWidths[size]
  const { body, height } = cellGrid(cells, { width, picture: [wide, high], gap })
  return sheetOf(width, height, alt, body)
}

/** Teeth below the print and above the base, too shallow, too deep, and set even on a plank. */
export const toothDepth = declareDrawing({
  name: 'tooth-depth',
  labels: wording,
  draw,
  numbers: ({ words, q }) =>
    [
      `${words.teeth} ${q('practice.harrow.depth')}, ${words.print} ${q('practice.print-depth')}.`,
      `${words.good}: ${fill(words.goodShows, { step: q('practice.harrow.step') })}`,
      `${words.shallow}: ${words.shallowShows}`,
      `${words.deep}: ${words.deepShows}`,
      `${words.plank}: ${words.plankShows}`,
    ].join(' '),
})

import { fill } from '../../../model/pattern.ts'
import { entries, holding } from '../../../validate/schemas/words/group.ts'
import { type Cell, cellGrid } from '../cells.ts'
import { type ContextFor, declareDrawing, labels } from '../drawing.ts'
import { measure, type Point, placed, poly, right, sheetOf, slab, stroke, wrong } from '../ink.ts'
import { type DrawingSize, drawingWidths } from '../sizes.ts'
import { layers } from './earth.ts'

const wording = labels('straightedge', {
  ...entries('flat', 'hollow', 'lip', 'lipShows', 'slope', 'slopeShows'),
  flatShows: holding('tolerance'),
  hollowShows: holding('tolerance'),
})
type Context = ContextFor<typeof wording>

const grids: Readonly<Record<DrawingSize, { readonly wide: number; readonly gap: number }>> = {
  page: { wide: 107, gap: 12 },
  column: { wide: 154, gap: 18 },
  side: { wide: 172, gap: 0 },
}

const high = 62

/** A board on edge, its lower side from `from` to `to`. */
const board = ([ax, ay]: Point, [bx, by]: Point): string => {
  const turn = (Math.atan2(by - ay, bx - ax) * 180) / Math.PI
  return placed([ax, ay], slab([0, -8], Math.hypot(bx - ax, by - ay), 8, { fill: 'stone' }), {
    turn,
  })
}

type Kind = 'flat' | 'hollow' | 'lip' | 'slope'

/** The surface under the board, and the board on it. */
const pictures: Readonly<Record<Kind, (at: Point, wide: number) => string>> = {
  flat: ([x, y], wide) => {
    const top = y + 36
    return (
      layers({ x, wide, surface: top, base: top + 16 }) +
      board([x + 8, top], [x + wide - 8, top]) +
      right([x + wide - 10, y + 8])
    )
  },
  hollow: ([x, y], wide) => {
    const top = y + 36
    const dip = Array.from({ length: 15 }, (_, i): Point => {
      const at = i / 14
      return [x + wide * (0.2 + 0.6 * at), top + 9 * Math.sin(Math.PI * at)]
    })
    return (
      layers({ x, wide, surface: top, base: top + 16 }, dip) +
      board([x + 8, top], [x + wide - 8, top]) +
      measure([x + wide / 2, top], [x + wide / 2, top + 9]) +
      wrong([x + wide - 5, y + 5])
    )
  },
  lip: ([x, y], wide) => {
    const top = y + 38
    const bump = Array.from({ length: 11 }, (_, i): Point => {
      const at = i / 10
      return [x + wide * (0.38 + 0.24 * at), top - 8 * Math.sin(Math.PI * at)]
    })
    const middle = x + wide / 2
    const rocking = `M${x + wide - 16} ${top - 6}q6 -5 3 -13M${x + 16} ${top - 20}q-6 5 -3 13`
    return (
      layers({ x, wide, surface: top, base: top + 14 }, bump) +
      board([x + 10, top - 1], [x + wide - 10, top - 15]) +
      stroke(rocking, { pen: 0.9 }) +
      poly(
        [
          [middle, top - 8],
          [middle, top - 9],
        ],
        { pen: 2 },
      ) +
      wrong([x + wide - 5, y + 5])
    )
  },
  slope: ([x, y], wide) => {
    const [low, up] = [y + 46, y + 28]
    const edge: Point[] = [
      [x, low],
      [x + wide, up],
    ]
    const floor = y + 54
    const level = up + 1
    return [
      stroke(`M${x} ${low}L${x + wide} ${up}V${floor}H${x}Z`, {
        fill: 'stone',
        stroke: 'none',
        pen: 0,
      }),
      poly(edge, { pen: 1.5 }),
      board([x + 6, level], [x + wide - 4, level]),
      // The level with its bubble.
      slab([x + wide / 2 - 16, level - 15], 32, 7, { fill: 'paper' }, 2),
      slab([x + wide / 2 - 4, level - 13], 8, 3, { fill: 'ink', pen: 0.3 }, 1.5),
      measure([x + 8, level], [x + 8, low - 2]),
    ].join('')
  },
}

const shown = ({ words, q }: Context): Readonly<Record<Kind, string>> => {
  const tolerance = q('cushion.depth.tolerance')
  return {
    flat: fill(words.flatShows, { tolerance }),
    hollow: fill(words.hollowShows, { tolerance }),
    lip: words.lipShows,
    slope: words.slopeShows,
  }
}

const kinds: readonly Kind[] = ['flat', 'hollow', 'lip', 'slope']

function draw(context: Context, size: DrawingSize): string {
  const { words, alt } = context
  const { wide, gap } = grids[size]
  const says = shown(context)
  const cells = kinds.map(
    (kind): Cell => ({
      picture: (at) => pictures[kind](at, wide),
      name: words[kind],
      says: says[kind],
    }),
  )
  const width = drawingWidths[size]
  const { body, height } = cellGrid(cells, { width, picture: [wide, high], gap })
  return sheetOf(width, height, alt, body)
}

/** What a straightedge shows on the ground: flat, hollow, a lip, and with a level the slope. */
export const straightedge = declareDrawing({
  name: 'straightedge',
  labels: wording,
  draw,
  numbers: (context) => {
    const says = shown(context)
    return kinds.map((kind) => `${context.words[kind]}: ${says[kind]}`).join(' ')
  },
})

import { fill } from '../../../model/pattern.ts'
import { entries, holding } from '../../../validate/schemas/words/group.ts'
import { type Cell, cellGrid } from '../cells.ts'
import { type ContextFor, declareDrawing, labels } from '../drawing.ts'
import { area, hatched, measure, type Point, poly, sheetOf, slab, stroke } from '../ink.ts'
import { say, smallest } from '../letters.ts'
import { type DrawingSize, drawingWidths } from '../sizes.ts'

const wording = labels('cups', {
  ...entries('row', 'one', 'oneShows', 'ends', 'endsShows'),
  rowShows: holding('width'),
  band: holding('apart'),
})
type Context = ContextFor<typeof wording>

const grids: Readonly<Record<DrawingSize, { readonly wide: number; readonly gap: number }>> = {
  page: { wide: 145, gap: 15 },
  column: { wide: 154, gap: 18 },
  side: { wide: 172, gap: 0 },
}

const high = 70
const count = 10

/** A cup around the middle of its foot, filled to a share of its height. */
function cup([x, y]: Point, half: number, tall: number, full: number, odd: boolean): string {
  const at = (share: number): number => half * (0.82 + 0.18 * share)
  const water: Point[] = [
    [x - at(full), y - tall * full],
    [x + at(full), y - tall * full],
    [x + half * 0.82, y],
    [x - half * 0.82, y],
  ]
  return [
    full === 0 ? '' : area(water, { fill: odd ? 'paper' : 'stone', pen: 0.6 }),
    odd ? hatched(water, 2.6, 0.8) : '',
    poly(
      [
        [x - half, y - tall],
        [x - half * 0.82, y],
        [x + half * 0.82, y],
        [x + half, y - tall],
      ],
      { pen: 1.1 },
    ),
  ].join('')
}

/** The truck from behind over a row of cups, its wheels between them. */
function row([x, y]: Point, wide: number): string {
  const foot = y + high - 8
  const pitch = wide / count
  const middle = x + wide / 2
  const wheels = [-2, 2].map((off) => middle + off * pitch)
  const nozzles = Array.from({ length: 6 }, (_, i) => middle + (i - 2.5) * pitch * 0.8)
  const bar = foot - 28
  const fans = nozzles.map((from, i) => {
    const to = x + (wide * (i + 0.5)) / 6
    return `M${from} ${bar + 3}L${to - 9} ${foot - 8}M${from} ${bar + 3}L${to + 9} ${foot - 8}`
  })
  return [
    stroke(fans.join(''), { pen: 0.5, dash: '2 2' }),
    ...wheels.map((at) => slab([at - 4.5, foot - 32], 9, 32, { fill: 'ink' }, 2)),
    stroke(
      `M${middle - 2.6 * pitch} ${foot - 33}v-10q0 -9 12 -9H${middle + 2.6 * pitch - 12}q12 0 12 9v10Z`,
      { fill: 'stone' },
    ),
    slab([middle - 2.6 * pitch, bar], 5.2 * pitch, 3, { fill: 'ink' }),
    ...Array.from({ length: count }, (_, i) =>
      cup([x + (i + 0.5) * pitch, foot], 3.2, 7, 0, false),
    ),
    poly(
      [
        [x, foot],
        [x + wide, foot],
      ],
      { pen: 1 },
    ),
    measure([x, foot + 6], [x + wide, foot + 6]),
  ].join('')
}

/** Cups with their readings in a band around the mean; what is out of it is hatched. */
function readings([x, y]: Point, wide: number, shares: readonly number[], said: string): string {
  const foot = y + high - 4
  const [pitch, tall] = [wide / count, 48]
  const normal = 0.66
  const [low, up] = [normal * 0.86, normal * 1.14]
  const band = slab([x, foot - tall * up], wide, tall * (up - low), {
    fill: 'stone',
    pen: 0.7,
    dash: '3 2',
  })
  const cups = shares.map((share, i) =>
    cup([x + (i + 0.5) * pitch, foot], pitch * 0.36, tall, normal * share, share < 0.86),
  )
  return band + cups.join('') + say([x, foot - tall - 4], said, { size: smallest, halo: true })
}

const level: readonly number[] = [0.97, 1.03, 1, 0.98, 1.02, 1.01, 0.97, 1, 1.03, 0.98]

const withLow = (low: readonly number[]): readonly number[] =>
  level.map((share, i) => (low.includes(i) ? 0.55 : share))

function draw(context: Context, size: DrawingSize): string {
  const { words, q, alt } = context
  const { wide, gap } = grids[size]
  const band = fill(words.band, { apart: q('practice.cups-apart') })
  const outcome = (name: string, says: string, low: readonly number[]): Cell => ({
    picture: (at) => readings(at, wide, withLow(low), band),
    name,
    says,
  })
  const cells: Cell[] = [
    {
      picture: (at) => row(at, wide),
      name: words.row,
      says: fill(words.rowShows, { width: q('gear.spray.spray-width') }),
    },
    outcome(words.one, words.oneShows, [6]),
    outcome(words.ends, words.endsShows, [0, 9]),
  ]
  const width = drawingWidths[size]
  const { body, height } = cellGrid(cells, { width, picture: [wide, high], gap })
  return sheetOf(width, height, alt, body)
}

/** The cup test: how cups and wheels stand, and what low cups say. The readings are types. */
export const cupTest = declareDrawing({
  name: 'cup-test',
  labels: wording,
  needs: 'gear.spray.spray-width',
  draw,
  numbers: ({ words, q }) =>
    [
      `${words.row}: ${fill(words.rowShows, { width: q('gear.spray.spray-width') })}`,
      `${words.one}: ${words.oneShows}`,
      `${words.ends}: ${words.endsShows}`,
      fill(words.band, { apart: q('practice.cups-apart') }),
    ].join(' '),
})

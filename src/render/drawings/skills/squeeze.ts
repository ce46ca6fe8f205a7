import { entries } from '../../../validate/schemas/words/group.ts'
import { type Cell, cellGrid } from '../cells.ts'
import { type ContextFor, declareDrawing, labels } from '../drawing.ts'
import { dots, limbs, type Point, placed, scatter, sheetOf, slab, stroke } from '../ink.ts'
import { type DrawingSize, drawingWidths } from '../sizes.ts'
import { fist, lump, openHand } from './people.ts'

const wording = labels(
  'squeeze',
  entries(
    ...(['squeeze', 'squeezeSays', 'dry', 'dryShows', 'dryDo'] as const),
    ...(['nearly', 'nearlyShows', 'nearlyDo', 'good', 'goodShows', 'goodDo'] as const),
    ...(['wet', 'wetShows', 'wetDo', 'wanted'] as const),
  ),
)
type Context = ContextFor<typeof wording>

const grains = (seed: number, count: number, at: (random: () => number) => Point): string => {
  const random = scatter(seed)
  return dots(
    Array.from({ length: count }, () => at(random)),
    0.8,
  )
}

const drop = (x: number, y: number, fill: 'ink' | 'paper'): string =>
  stroke(`M${x} ${y - 5}q3.6 4.6 0 6.4q-3.6 -1.8 0 -6.4Z`, { fill, pen: 0.9 })

const lumpAt = (points: readonly Point[], wide: number) => ({
  at: points,
  wide,
  fill: 'stone' as const,
})

/** What is seen in the opened hand, around the middle of the palm. */
const inHand = {
  dry: (): string =>
    openHand(2.4) +
    grains(4, 80, (r) => [-8 + r() * 24, -11 + r() * 22]) +
    grains(9, 60, (r) => {
      const down = r()
      return [6 + r() * 32, 22 + down * down * 16]
    }),
  nearly: (): string =>
    openHand() +
    limbs([
      lumpAt(
        [
          [-10, -5],
          [-4, -7],
        ],
        8,
      ),
      lumpAt(
        [
          [-9, 8],
          [-1, 10],
        ],
        8,
      ),
      lumpAt(
        [
          [8, -8],
          [12, -3],
        ],
        8,
      ),
      lumpAt(
        [
          [10, 9],
          [13, 9],
        ],
        6,
      ),
    ]) +
    grains(7, 22, (r) => [-12 + r() * 34, -14 + r() * 30]),
  good: (): string => openHand() + lump(),
  wet: (): string =>
    openHand() +
    stroke('M-14 -12q12 -7 26 0q9 6 4 16q-10 9 -26 5q-12 -8 -4 -21Z', { fill: 'stone' }) +
    stroke('M14 -7h14M16 2h18M14 9h14', { pen: 0.7 }) +
    drop(-6, -4, 'paper') +
    drop(6, 3, 'paper') +
    drop(2, 30, 'ink') +
    drop(14, 36, 'ink') +
    drop(-8, 37, 'ink'),
} as const

type Outcome = keyof typeof inHand

/** Width and height of a picture, and its scale. */
const grids: Readonly<
  Record<DrawingSize, { readonly picture: Point; readonly gap: number; readonly scale: number }>
> = {
  page: { picture: [85, 66], gap: 10, scale: 0.84 },
  column: { picture: [100, 72], gap: 13, scale: 0.96 },
  side: { picture: [80, 60], gap: 12, scale: 0.79 },
}

function draw({ words, alt }: Context, size: DrawingSize): string {
  const { picture, gap, scale } = grids[size]
  const middle = ([x, y]: Point): Point => [x + 50 * scale + 1, y + 35 * scale]
  const outcome = (name: Outcome): Cell => ({
    // The right one is framed, which a copier keeps.
    picture: ([x, y]) =>
      (name === 'good'
        ? slab([x - 3, y - 1], picture[0] + 3, picture[1] + 1, { pen: 1.4 }, 3)
        : '') + placed(middle([x, y]), inHand[name](), { scale }),
    name: words[name],
    says: words[`${name}Shows`],
    act: words[`${name}Do`],
  })
  const first: Cell = {
    picture: (at) =>
      placed(middle(at), fist() + grains(2, 14, (r) => [-8 + r() * 26, 24 + r() * 7]), { scale }),
    name: words.squeeze,
    says: words.squeezeSays,
  }
  const width = drawingWidths[size]
  const cells = [first, ...(['dry', 'nearly', 'good', 'wet'] as const).map(outcome)]
  const { body, height } = cellGrid(cells, { width, picture, gap, top: 2 })
  return sheetOf(width, height, alt, body)
}

/** One squeeze of a handful, what may be in the hand after it, and what each asks for. */
export const squeeze = declareDrawing({
  name: 'squeeze',
  labels: wording,
  draw,
  numbers: ({ words, q }) =>
    [
      words.squeezeSays,
      ...(['dry', 'nearly', 'good', 'wet'] as const).map(
        (name) => `${words[name]}: ${words[`${name}Shows`]} ${words[`${name}Do`]}.`,
      ),
      ...(q('cushion.moisture.target') === ''
        ? []
        : [`${words.wanted} ${q('cushion.moisture.target')}.`]),
    ].join(' '),
})

import { fill } from '../../../model/pattern.ts'
import { entries, holding } from '../../../validate/schemas/words/group.ts'
import { type Cell, cellGrid } from '../cells.ts'
import { type ContextFor, declareDrawing, labels } from '../drawing.ts'
import { disc, measure, type Point, poly, sheetOf, stroke, wrong } from '../ink.ts'
import { say, smallest } from '../letters.ts'
import { type DrawingSize, drawingWidths } from '../sizes.ts'
import { layers } from './earth.ts'

const wording = labels('pylons', {
  ...entries('spacing', 'line', 'height', 'string', 'cushion'),
  spacingShows: holding('straights', 'turns'),
  lineShows: holding('off'),
  heightShows: holding('height'),
})
type Context = ContextFor<typeof wording>

const grids: Readonly<Record<DrawingSize, { readonly wide: number; readonly gap: number }>> = {
  page: { wide: 145, gap: 15 },
  column: { wide: 154, gap: 18 },
  side: { wide: 172, gap: 0 },
}

const high = 76

const post = (at: Point): string => disc(at, 3, { fill: 'paper', pen: 1.3 })

/** From above: along the straight and into the turn, both spacings to one scale. */
function spacing([x, y]: Point, wide: number, { q, si }: Context): string {
  const [straight, turn] = [si('oval.pylons.straights') ?? 18, si('oval.pylons.turns') ?? 12]
  const k = (wide * 0.84) / (2 * straight + 2 * turn)
  const line = y + 20
  const begin = x + 2 * straight * k + 4
  const radius = 90
  const onTurn = (along: number): Point => [
    begin + radius * Math.sin(along / radius),
    line + radius * (1 - Math.cos(along / radius)),
  ]
  const turned = [1, 2].map((i) => onTurn(i * turn * k))
  const [first = [x, y] as Point, second = [x, y] as Point] = turned
  return [
    stroke(`M${x} ${line}H${begin}A${radius} ${radius} 0 0 1 ${second[0]} ${second[1]}`, {
      pen: 0.7,
      dash: '3 2',
    }),
    ...[0, 1, 2].map((i) => post([x + 4 + i * straight * k, line])),
    ...turned.map(post),
    measure([x + 4, line + 12], [x + 4 + straight * k, line + 12]),
    say([x + 4 + (straight * k) / 2, line + 24], q('oval.pylons.straights'), {
      size: 8.6,
      bold: true,
      anchor: 'middle',
    }),
    measure([first[0] - 4, first[1] + 12], [second[0] - 6, second[1] + 11]),
    say([first[0] - 8, second[1] + 24], q('oval.pylons.turns'), {
      size: 8.6,
      bold: true,
      anchor: 'middle',
    }),
  ].join('')
}

/** From above: a string along the marks; one pylon stands off it. */
function offLine([x, y]: Point, wide: number, { q, words }: Context): string {
  const line = y + 34
  const at = (i: number): number => x + 10 + (i * (wide - 20)) / 4
  const off: Point = [at(2), line + 13]
  return [
    poly(
      [
        [x, line],
        [x + wide, line],
      ],
      { pen: 0.8 },
    ),
    ...[0, 1, 3, 4].map((i) => post([at(i), line])),
    disc([at(2), line], 3, { dash: '1.5 1.5', pen: 0.8 }),
    post(off),
    wrong([off[0], off[1] + 14], 7),
    measure([at(2) + 12, line], [at(2) + 12, off[1]]),
    say([at(2) + 17, line + 13], q('practice.off-line'), { size: 8.6, bold: true }),
    say([x, line - 7], words.string, { size: smallest }),
  ].join('')
}

/** From the side: upright, its foot on the cushion; and buried by what has built up. */
function upright([x, y]: Point, wide: number, { q, words }: Context): string {
  const ground = y + high - 22
  const pylon = (at: number, sunk: number): string =>
    stroke(`M${at - 5} ${ground}v-4l2.5 -3v-38q2.5 -5 5 0v38l2.5 3v4Z`, { fill: 'paper' }) +
    (sunk === 0
      ? ''
      : stroke(`M${at - 26} ${ground}Q${at} ${ground - sunk * 2} ${at + 26} ${ground}Z`, {
          fill: 'stone',
          pen: 1,
        }))
  const [good, buried] = [x + wide * 0.26, x + wide * 0.76]
  return [
    layers({ x, wide, surface: ground, base: ground + 12 }),
    pylon(good, 0),
    pylon(buried, 13),
    say([good + 19, ground + 9], words.cushion, { size: smallest, halo: true }),
    measure([good + 14, ground], [good + 14, ground - 47]),
    say([good + 19, ground - 20], q('practice.pylon-height'), {
      size: 8.6,
      bold: true,
      halo: true,
    }),
    wrong([buried + 22, y + 18], 7),
  ].join('')
}

const shown = ({ words, q }: Context) => ({
  spacing: fill(words.spacingShows, {
    straights: q('oval.pylons.straights'),
    turns: q('oval.pylons.turns'),
  }),
  line: fill(words.lineShows, { off: q('practice.off-line') }),
  height: fill(words.heightShows, { height: q('practice.pylon-height') }),
})

function draw(context: Context, size: DrawingSize): string {
  const { words, alt } = context
  const { wide, gap } = grids[size]
  const says = shown(context)
  const cells: Cell[] = [
    { picture: (at) => spacing(at, wide, context), name: words.spacing, says: says.spacing },
    { picture: (at) => offLine(at, wide, context), name: words.line, says: says.line },
    { picture: (at) => upright(at, wide, context), name: words.height, says: says.height },
  ]
  const width = drawingWidths[size]
  const { body, height } = cellGrid(cells, { width, picture: [wide, high], gap })
  return sheetOf(width, height, alt, body)
}

/** How far pylons stand from each other, off the line at most, and how high. */
export const pylonLine = declareDrawing({
  name: 'pylon-line',
  labels: wording,
  needs: 'oval.pylons.turns',
  draw,
  numbers: (context) => {
    const { words } = context
    const says = shown(context)
    return `${words.spacing}: ${says.spacing} ${words.line}: ${says.line} ${words.height}: ${says.height}`
  },
})

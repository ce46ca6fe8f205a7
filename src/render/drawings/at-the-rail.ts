import { fill } from '../../model/pattern.ts'
import { entries, holding } from '../../validate/schemas/words/group.ts'
import { type ContextFor, declareDrawing, labels } from './drawing.ts'
import { line, loose, measure, type Point, poly, sheetOf, solid, stroke, tip } from './ink.ts'
import { say, widthOf } from './letters.ts'
import { type DrawingSize, drawingWidths } from './sizes.ts'

const wording = labels('at-the-rail', {
  ...entries('rail', 'outside', 'lump', 'up', 'thin'),
  lap: holding('number'),
  clear: holding('width'),
})
type Context = ContextFor<typeof wording>

const size = 8.6

/** Where the ground lies, points: its low end is at the rail. */
type Lay = {
  readonly width: number
  readonly left: number
  readonly right: number
  readonly ground: (x: number) => number
  /** How many times the row of material is shown on its way up. */
  readonly rows: number
}

function layOf(of: DrawingSize): Lay {
  const width = drawingWidths[of]
  const [left, right] = [of === 'side' ? 14 : 24, width - 4]
  const [low, rise] = of === 'side' ? [84, 34] : [88, 46]
  return {
    width,
    left,
    right,
    ground: (x) => low - (rise * (x - left)) / (right - left),
    rows: of === 'side' ? 2 : 3,
  }
}

/** A row of material, as wide and high as that, lying on the slope at a place. */
function heap({ ground }: Lay, x: number, wide: number, high: number, dash?: string): string {
  const top = (at: number): number => {
    const part = (at - x) / wide
    return ground(at) - high * Math.sin(Math.PI * Math.min(1, Math.max(0, part))) ** 0.8
  }
  const outline = Array.from({ length: 15 }, (_, i): Point => {
    const at = x + (wide * i) / 14
    return [at, top(at)]
  })
  return (
    loose(
      x + 1,
      x + wide - 1,
      (at) => top(at) + 1.2,
      (at) => ground(at) - 0.8,
      { every: 9 },
    ) + poly(outline, dash === undefined ? {} : { dash })
  )
}

/** The heap at the rail, then the row of each lap farther up, each with its lap. */
function climbing(lay: Lay, { words }: Context): string {
  const { left, right, ground, rows } = lay
  const pitch = ((right - left) * 0.6) / (rows + 0.4)
  const places = Array.from({ length: rows }, (_, i) => left + (i + 0.85) * pitch)
  const parts = places.map((x, i) => {
    const high = 12 - i * 1.6
    const [from, to] = [i === 0 ? left + 16 : (places[i - 1] ?? 0) + 15, x + 6]
    const [start, end] = [ground(from) - 16, ground(to) - 15]
    // The arc comes down on the next row.
    const above: Point = [(from + to) / 2, ground((from + to) / 2) - 27]
    const angle = Math.atan2(end - above[1], to - above[0])
    return [
      heap(lay, x, 24, high),
      stroke(`M${from} ${start}Q${above[0]} ${above[1]} ${to - 3} ${end - 2}`, { pen: 1.2 }),
      tip([to, end], angle, 5.5),
      say([x + 12, ground(x + 12) + 16], fill(words.lap, { number: i + 1 }), {
        anchor: 'middle',
        size,
        halo: true,
      }),
    ].join('')
  })
  return heap(lay, left + 1, 26, 16, '2 1.6') + parts.join('')
}

/** What the last lap leaves thin, out to the outside. */
function spread({ left, right, ground }: Lay, { words }: Context): string {
  const [from, to] = [left + (right - left) * 0.66, right - 2]
  const label = from + (to - from) / 2
  return [
    loose(
      from,
      to,
      (x) => ground(x) - 4.6,
      (x) => ground(x) - 0.6,
      { every: 8 },
    ),
    line([from, ground(from) - 4.6], [to, ground(to) - 4.6], { pen: 'hair' }),
    say([Math.min(label, right - widthOf(words.thin, size)), ground(to) + 26], words.thin, {
      size,
    }),
    line([label + 8, ground(to) + 17], [label + 8, ground(label + 8) - 2], { pen: 'hair' }),
  ].join('')
}

/** The heap by its name and its volume, and how far from the rail all is moved. */
function below({ left, right, ground }: Lay, { words, q }: Context): string {
  const foot = ground(left) + 20
  const clear = left + (right - left) * 0.62
  const band = q('practice.grade.band')
  return [
    line([left + 14, ground(left + 14) - 9], [left + 14, foot + 12], { pen: 'hair' }),
    say([left + 6, foot + 21], told(words.lump, q('creep.volume')), { size }),
    ...(band === ''
      ? []
      : [
          measure([left, foot + 3], [clear, foot + 3]),
          say([(left + clear) / 2 + 14, foot], fill(words.clear, { width: band }), {
            anchor: 'middle',
            size,
            bold: true,
            halo: true,
          }),
        ]),
  ].join('')
}

function draw(context: Context, of: DrawingSize): string {
  const { words, alt } = context
  const lay = layOf(of)
  const { width, left, right, ground } = lay
  return sheetOf(
    width,
    ground(left) + 46,
    alt,
    [
      solid(
        [
          [left - 2, ground(left - 2)],
          [right, ground(right)],
        ],
        6,
        5,
      ),
      line([left - 1, ground(left) + 4], [left - 5, ground(left) - 30], { pen: 'bold' }),
      say([left - 5, ground(left) - 35], words.rail, { anchor: 'middle', size }),
      say([right, ground(right) - 11], words.outside, { anchor: 'end', size }),
      say([left + (right - left) * 0.16, 22], words.up, { size, bold: true }),
      climbing(lay, context),
      spread(lay, context),
      below(lay, context),
    ].join(''),
  )
}

/** Words with a number where it is known. */
const told = (said: string, number: string): string => (number === '' ? said : `${said}: ${number}`)

/** The heap at the rail, carried up the slope lap by lap and spread thin. */
export const pullback = declareDrawing({
  name: 'pullback',
  labels: wording,
  draw,
  numbers: ({ words, q }) => {
    const band = q('practice.grade.band')
    return [
      told(words.lump, q('creep.volume')),
      words.up,
      ...(band === '' ? [] : [fill(words.clear, { width: band })]),
      words.thin,
    ].join('; ')
  },
})

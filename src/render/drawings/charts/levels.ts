import type { LevelSection } from '../../../model/manual/charts.ts'
import { fill } from '../../../model/pattern.ts'
import { entries, holding } from '../../../validate/schemas/words/group.ts'
import { type ContextFor, declareDrawing, labels } from '../drawing.ts'
import { type Field, hatched } from '../fills.ts'
import { disc, line, type Point, poly, sheetOf, slab, stroke } from '../ink.ts'
import { say } from '../letters.ts'
import { type DrawingSize, drawingWidths } from '../sizes.ts'

const wording = labels('levels', {
  ...entries('foundSlope', 'wantedSlope', 'tooHigh', 'tooLow'),
  heights: holding('factor'),
})
type Context = ContextFor<typeof wording>

const size = 8.4

/** How many sections stand beside each other, how high each is, and how high the readings reach. */
const grids: Readonly<
  Record<DrawingSize, { readonly columns: number; readonly high: number; readonly most: number }>
> = {
  page: { columns: 2, high: 78, most: 16 },
  column: { columns: 2, high: 78, most: 14 },
  side: { columns: 1, high: 78, most: 14 },
}
const gap = 22

/** A height as printed beside its reading: "+1 3/8"; only the first of a section says its unit. */
const signed = ({ above, height }: LevelSection['points'][number], i: number): string => {
  const number = i === 0 ? height : height.replace(/ (in|mm)$/, '')
  return /[1-9]/.test(height) ? `${above < 0 ? '−' : '+'}${number}` : number
}

/** The sections in words. */
const numbers = ({ manual, words }: Context): string =>
  manual.charts.levels
    .map(
      (s) =>
        `${s.station}: ${words.foundSlope} ${s.found}, ${words.wantedSlope} ${s.wanted}; ${s.points.map(signed).join(', ')}`,
    )
    .join('. ')

/** How far apart the strokes stand that fill what is too low, points. */
const every = 3.2

/** Height of the line of readings at `x`; undefined beside it. */
function heightAt(points: readonly Point[], x: number): number | undefined {
  const i = points.findIndex((p) => p[0] >= x)
  const [p, q] = [points[i - 1], points[i]]
  return p && q ? p[1] + ((q[1] - p[1]) * (x - p[0])) / (q[0] - p[0]) : undefined
}

/** What lies above the wanted slope, in slanting strokes, and below it, in upright ones. */
function parts(points: readonly Point[], zero: number): string {
  const [first, last] = [points[0], points.at(-1)]
  if (!first || !last) return ''
  const crossed = points.flatMap((p, i): Point[] => {
    const q = points[i + 1]
    return !q || (p[1] - zero) * (q[1] - zero) >= 0
      ? [p]
      : [p, [p[0] + ((q[0] - p[0]) * (zero - p[1])) / (q[1] - p[1]), zero]]
  })
  const over: Field = [
    [[first[0], zero], ...crossed.map(([x, y]): Point => [x, Math.min(y, zero)]), [last[0], zero]],
  ]
  const strokes = Array.from(
    { length: Math.floor((last[0] - first[0]) / every) },
    (_, i) => first[0] + (i + 0.5) * every,
  ).flatMap((x) => {
    const y = heightAt(points, x)
    return y === undefined || y <= zero + 0.5 ? [] : [`M${x.toFixed(1)} ${zero}V${y.toFixed(1)}`]
  })
  return (
    hatched(over, -45, every) +
    (strokes.length > 0 ? stroke(strokes.join(''), { pen: 'hair' }) : '')
  )
}

/** How a section is drawn: its corner, its width, points a meter of height. */
type Lay = { readonly at: Point; readonly wide: number; readonly k: number }

/** One section: the level line is the slope wanted. */
function section(s: LevelSection, { at: [x0, y0], wide, k }: Lay, { words }: Context): string {
  const zero = y0 + 49
  const across = (wide - 26) / s.width
  const points = s.points.map((p): Point => [x0 + 9 + p.offset * across, zero - p.above * k])
  const label = (p: LevelSection['points'][number], [x, y]: Point, i: number): string =>
    say(
      [i === 0 ? x - 3 : x, p.above < 0 ? Math.max(y, zero) + 11 : Math.min(y, zero) - 4.5],
      signed(p, i),
      { anchor: i === 0 ? 'start' : 'middle', size, halo: true },
    )
  return [
    say([x0 + 2, y0 + 9], s.station, { size: 9.4, bold: true }),
    say([x0 + 2, y0 + 19.5], `${words.foundSlope} ${s.found} · ${words.wantedSlope} ${s.wanted}`, {
      size,
    }),
    parts(points, zero),
    line([x0 + 9, zero], [x0 + 9 + s.width * across, zero], { dash: '4 2.5' }),
    poly(points, { pen: 1.7 }),
    // The rail.
    line([x0 + 5, zero + 5], [x0 + 3, zero - 17], { pen: 'bold' }),
    ...points.flatMap((point, i) => {
      const p = s.points[i]
      return p ? [disc(point, 1.9, { fill: 'ink', stroke: 'none' }), label(p, point, i)] : []
    }),
  ].join('')
}

/** What the strokes mean. */
function key(y: number, isStacked: boolean, { words }: Context): string {
  const [w, h] = [20, 9]
  const swatch = ([x, top]: Point): Field => [
    [
      [x, top],
      [x + w, top],
      [x + w, top + h],
      [x, top + h],
    ],
  ]
  const second: Point = isStacked ? [9, y + 13] : [140, y]
  const upright = Array.from(
    { length: Math.floor(w / every) },
    (_, i) => `M${second[0] + (i + 0.5) * every} ${second[1]}v${h}`,
  )
  const named = ([x, top]: Point, said: string): string =>
    slab([x, top], w, h, { pen: 'hair' }) + say([x + w + 5, top + 7.4], said, { size })
  return [
    hatched(swatch([9, y]), -45, every),
    named([9, y], words.tooHigh),
    stroke(upright.join(''), { pen: 'hair' }),
    named(second, words.tooLow),
  ].join('')
}

function draw(context: Context, of: DrawingSize): string {
  const { levels } = context.manual.charts
  if (levels.length === 0) return ''
  const { columns, high, most } = grids[of]
  const width = drawingWidths[of]
  const wide = (width - (columns - 1) * gap) / columns
  const k = most / Math.max(0.005, ...levels.flatMap((s) => s.points.map((p) => Math.abs(p.above))))
  const foot = Math.ceil(levels.length / columns) * high + 6
  // How many times too high against the widest section.
  const factor = Math.round((k * Math.max(...levels.map((s) => s.width))) / (wide - 26))
  const note = foot + (columns === 1 ? 36 : 24)
  const at = (i: number): Point => [(i % columns) * (wide + gap), Math.floor(i / columns) * high]
  return sheetOf(
    width,
    note + 4,
    context.alt,
    levels.map((s, i) => section(s, { at: at(i), wide, k }, context)).join('') +
      key(foot, columns === 1, context) +
      say([9, note], fill(context.words.heights, { factor: String(factor) }), { size }),
  )
}

/**
 * Sections across the track at the stations of the level survey, against the slope that is wanted.
 */
export const levels = declareDrawing({
  name: 'levels',
  labels: wording,
  draw,
  numbers,
})

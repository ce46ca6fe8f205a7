import type { LevelSection } from '../../../model/manual/charts.ts'
import { entries } from '../../../validate/schemas/words/group.ts'
import { type ContextFor, declareDrawing, labels } from '../drawing.ts'
import { type Field, hatched } from '../fills.ts'
import { box, dashed, line, type Point, path, polyline, svg, text } from '../svg.ts'

const wording = labels('levels', entries('foundSlope', 'wantedSlope', 'tooHigh', 'tooLow'))
type Context = ContextFor<typeof wording>

const columns = 2
const [wide, high, gap] = [424, 154, 52]
const [size, most] = [15.5, 30]

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

/** How far apart the strokes stand that fill what is too low, px. */
const every = 6

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
    return y === undefined || y <= zero + 1 ? [] : [`M${x.toFixed(1)} ${zero}V${y.toFixed(1)}`]
  })
  return hatched(over, -45, 6, 'thin') + (strokes.length > 0 ? path(strokes.join(''), 'thin') : '')
}

/** One section: the level line is the slope wanted. */
function section(s: LevelSection, [x0, y0]: Point, k: number, { words }: Context): string {
  const zero = y0 + 84
  const across = (wide - 40) / s.width
  const points = s.points.map((p): Point => [x0 + 14 + p.offset * across, zero - p.above * k])
  const edge: Point = [x0 + 14 + s.width * across, zero]
  return [
    text([x0 + 4, y0 + 18], s.station, 'start', size + 2, 'font-weight="600"'),
    text(
      [x0 + wide - 20, y0 + 18],
      `${words.foundSlope} ${s.found} · ${words.wantedSlope} ${s.wanted}`,
      'end',
      size,
    ),
    parts(points, zero),
    line([x0 + 14, zero], edge, 'line', dashed),
    polyline(points, 'bold'),
    line([x0 + 6, zero + 10], [x0 + 2, zero - 32], 'bold'),
    ...points.map(([x, y], i) => {
      const p = s.points[i]
      return p
        ? `<circle cx="${x.toFixed(1)}" cy="${y.toFixed(1)}" r="3.5" fill="currentColor"/>` +
            text(
              [i === 0 ? x - 4 : x, p.above < 0 ? Math.max(y, zero) + 22 : Math.min(y, zero) - 10],
              signed(p, i),
              i === 0 ? 'start' : 'middle',
              size,
            )
        : ''
    }),
  ].join('')
}

function draw(context: Context): string {
  const { levels } = context.manual.charts
  if (levels.length === 0) return ''
  const k = most / Math.max(0.005, ...levels.flatMap((s) => s.points.map((p) => Math.abs(p.above))))
  const rows = Math.ceil(levels.length / columns)
  const foot = rows * high + 8
  const key = (x: number, inside: string, label: string): string =>
    inside + box([x, foot + 10], 34, 16, 'thin') + text([x + 44, foot + 23], label, 'start', size)
  const swatch: Field = [
    [
      [14, foot + 10],
      [48, foot + 10],
      [48, foot + 26],
      [14, foot + 26],
    ],
  ]
  const upright = path(
    [0, 1, 2, 3, 4].map((i) => `M${364 + i * every} ${foot + 10}v16`).join(''),
    'thin',
  )
  return svg(
    900,
    foot + 34,
    context.alt,
    [
      ...levels.map((s, i) =>
        section(s, [(i % columns) * (wide + gap), Math.floor(i / columns) * high], k, context),
      ),
      key(14, hatched(swatch, -45, 6, 'thin'), context.words.tooHigh),
      key(360, upright, context.words.tooLow),
    ].join(''),
  )
}

/**
 * Sections across the track at the stations of the level survey, against the slope that is wanted.
 */
export const levels = declareDrawing({ name: 'levels', labels: wording, wide: true, draw, numbers })

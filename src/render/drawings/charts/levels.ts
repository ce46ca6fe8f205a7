import type { LevelSection } from '../../../model/manual/charts.ts'
import { fill } from '../../../model/pattern.ts'
import { entries, holding } from '../../../validate/schemas/words/group.ts'
import { type ContextFor, declareDrawing, labels } from '../drawing.ts'
import { type Field, hatched } from '../fills.ts'
import { disc, line, type Point, poly, sheetOf, slab, stroke } from '../ink.ts'
import { lead, lines, say, widthOf, withFractions, wrapped } from '../letters.ts'
import { type DrawingSize, drawingWidths } from '../sizes.ts'

export const wording = labels('levels', {
  ...entries('foundSlope', 'wantedSlope', 'tooHigh', 'tooLow', 'rail', 'level', 'framed'),
  deeper: holding('depth'),
  heights: holding('factor'),
})
type Context = ContextFor<typeof wording>

const size = 8.4

/** How many sections stand beside each other, and how high the readings reach. */
const grids: Readonly<Record<DrawingSize, { readonly columns: number; readonly most: number }>> = {
  page: { columns: 2, most: 16 },
  column: { columns: 2, most: 14 },
  side: { columns: 1, most: 14 },
}
const gap = 16

/** A height as printed beside its reading: "+1 3/8"; only the first of a section says its unit. */
const signed = ({ above, height }: LevelSection['points'][number], i: number): string => {
  const number = i === 0 ? height : height.replace(/ (in|mm)$/, '')
  return /[1-9]/.test(height) ? `${above < 0 ? '−' : '+'}${number}` : number
}

type LevelPoint = LevelSection['points'][number]

/** Whether what is to come off here is more than the cushion: a cut would go into the base. */
const tooDeep = ({ manual }: Context, p: LevelPoint): boolean =>
  p.above > manual.geometry.cushionDepth

const hasTooDeep = (context: Context, s: LevelSection): boolean =>
  s.points.some((p) => tooDeep(context, p))

const deeperText = ({ words, q }: Context): string =>
  fill(words.deeper, { depth: q('cushion.depth.target') })

/** The sections in words. */
function numbers(context: Context): string {
  const { manual, words } = context
  const { levels } = manual.charts
  const sections = levels.map((s) => {
    const deep = s.points.flatMap((p, i) => (tooDeep(context, p) ? [signed(p, i)] : []))
    const said = `${s.station}: ${words.foundSlope} ${s.found}, ${words.wantedSlope} ${s.wanted}; ${s.points.map(signed).join(', ')}`
    return deep.length === 0 ? said : `${said}; ${words.framed} ${deep.join(', ')}`
  })
  return levels.some((s) => hasTooDeep(context, s))
    ? [...sections, deeperText(context)].join('. ')
    : sections.join('. ')
}

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

/** How a section is drawn: its corner, its width, its wanted slope, points a meter of height. */
type Lay = {
  readonly at: Point
  readonly wide: number
  readonly zero: number
  readonly k: number
}

/** Where the first reading stands, with the rail left of it and its name under that. */
const inset = 17

/** Right of the last reading, which stands in its middle. */
const margin = 13

/** Where the height of a reading begins, how wide it is, and its foot: clear of the line. */
function placeOf(points: readonly Point[], s: LevelSection, i: number, zero: number) {
  const [p, point] = [s.points[i], points[i]]
  if (!p || !point) return undefined
  const wide = widthOf(withFractions(signed(p, i)), size)
  const from = i === 0 ? point[0] - 3 : point[0] - wide / 2
  const near = [from, from + wide].flatMap((x) => heightAt(points, x) ?? [])
  const isBelow = p.above < 0
  const y = isBelow
    ? Math.max(...near, point[1], zero) + 11
    : Math.min(...near, point[1], zero) - 4.5
  return { from, wide, y, isBelow }
}

/** The height of a reading beside its dot; in a frame where nobody cuts. */
function label(points: readonly Point[], s: LevelSection, i: number, lay: Lay, context: Context) {
  const p = s.points[i]
  const own = placeOf(points, s, i, lay.zero)
  if (!p || !own) return ''
  const next = placeOf(points, s, i + 1, lay.zero)
  // The first has its unit with it, and may reach the second: then it stands over that one.
  const isOver =
    i === 0 && next?.isBelow === false && !own.isBelow && next.from - 6 < own.from + own.wide
  const y = isOver ? Math.min(own.y, next.y - 12) : own.y
  const isFramed = tooDeep(context, p)
  return (
    (isFramed
      ? slab([own.from - 2.5, y - 7.6], own.wide + 5, 10, { fill: 'paper', pen: 1.2 })
      : '') +
    say([i === 0 ? own.from : own.from + own.wide / 2, y], signed(p, i), {
      anchor: i === 0 ? 'start' : 'middle',
      size,
      halo: !isFramed,
    })
  )
}

/** One section: the level line is the slope wanted. */
function section(s: LevelSection, lay: Lay, context: Context): string {
  const { words } = context
  const [x0, y0] = lay.at
  const { zero, k } = lay
  const across = (lay.wide - inset - margin) / s.width
  const points = s.points.map((p): Point => [x0 + inset + p.offset * across, zero - p.above * k])
  return [
    say([x0 + 2, y0 + 9], s.station, { size: 9.4, bold: true }),
    say([x0 + 2, y0 + 19.5], `${words.foundSlope} ${s.found} · ${words.wantedSlope} ${s.wanted}`, {
      size,
    }),
    hasTooDeep(context, s) ? say([x0 + 2, y0 + 30], words.framed, { size, bold: true }) : '',
    parts(points, zero),
    line([x0 + inset, zero], [x0 + inset + s.width * across, zero], { dash: '4 2.5' }),
    poly(points, { pen: 1.7 }),
    line([x0 + inset - 4, zero + 5], [x0 + inset - 6, zero - 17], { pen: 'bold' }),
    say([x0, zero + 15], words.rail, { size }),
    ...points.flatMap((point, i) => [
      disc(point, 1.9, { fill: 'ink', stroke: 'none' }),
      label(points, s, i, lay, context),
    ]),
  ].join('')
}

/** What strokes, line and frames mean, one below the other: what is drawn, and its foot. */
function key(y: number, width: number, context: Context): { drawn: string; foot: number } {
  const { words } = context
  const [x, w, h] = [9, 20, 9]
  const tops = [0, 1, 2, 3].map((i) => y + i * 13)
  const [high = 0, low = 0, level = 0, deep = 0] = tops
  const field: Field = [
    [
      [x, high],
      [x + w, high],
      [x + w, high + h],
      [x, high + h],
    ],
  ]
  const upright = Array.from(
    { length: Math.floor(w / every) },
    (_, i) => `M${x + (i + 0.5) * every} ${low}v${h}`,
  )
  const named = (top: number, said: string): string => say([x + w + 5, top + 7.4], said, { size })
  const warning = context.manual.charts.levels.some((s) => hasTooDeep(context, s))
    ? wrapped(deeperText(context), width - x - w - 8, size, true)
    : []
  return {
    drawn: [
      hatched(field, -45, every),
      slab([x, high], w, h, { pen: 'hair' }),
      named(high, words.tooHigh),
      stroke(upright.join(''), { pen: 'hair' }),
      slab([x, low], w, h, { pen: 'hair' }),
      named(low, words.tooLow),
      line([x, level + 4.5], [x + w, level + 4.5], { dash: '4 2.5' }),
      named(level, words.level),
      warning.length === 0 ? '' : slab([x, deep], w, h, { fill: 'paper', pen: 1.2 }),
      lines([x + w + 5, deep + 7.4], warning, { size, bold: true }),
    ].join(''),
    foot: deep + warning.length * lead(size),
  }
}

/** Room over and under the wanted slope that sections in one row take, points. */
function roomOf(row: readonly LevelSection[], k: number, context: Context) {
  const heights = row.flatMap((s) => s.points.map((p) => p.above * k))
  const head = row.some((s) => hasTooDeep(context, s)) ? 39 : 23
  return {
    over: head + Math.max(...heights, 5) + 15,
    under: Math.max(...heights.map((h) => -h), 3) + 20,
  }
}

export function drawLevels(context: Context, of: DrawingSize): string {
  const { levels } = context.manual.charts
  if (levels.length === 0) return ''
  const { columns, most } = grids[of]
  const width = drawingWidths[of]
  const wide = (width - (columns - 1) * gap) / columns
  const k = most / Math.max(0.005, ...levels.flatMap((s) => s.points.map((p) => Math.abs(p.above))))
  // How many times too high against the widest section.
  const factor = Math.round((k * Math.max(...levels.map((s) => s.width))) / (wide - inset - margin))
  const drawn: string[] = []
  let y = 0
  for (let first = 0; first < levels.length; first += columns) {
    const row = levels.slice(first, first + columns)
    const { over, under } = roomOf(row, k, context)
    for (const [i, s] of row.entries())
      drawn.push(section(s, { at: [i * (wide + gap), y], wide, zero: y + over, k }, context))
    y += over + under
  }
  const below = key(y + 6, width, context)
  const note = below.foot + 11
  return sheetOf(
    width,
    note + 4,
    context.alt,
    drawn.join('') +
      below.drawn +
      say([9, note], fill(context.words.heights, { factor: String(factor) }), { size }),
  )
}

/**
 * Sections across the track at the stations of the level survey, against the slope that is wanted.
 */
export const levels = declareDrawing({
  name: 'levels',
  labels: wording,
  draw: drawLevels,
  numbers,
})

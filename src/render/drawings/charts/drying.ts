import { secondsPerDay } from '../../../model/day.ts'
import type { DryingCurve } from '../../../model/manual/charts.ts'
import { fill } from '../../../model/pattern.ts'
import { entries, holding } from '../../../validate/schemas/words/group.ts'
import { type ContextFor, declareDrawing, labels } from '../drawing.ts'
import { dashed, line, type Point, polyline, svg, text } from '../svg.ts'

const wording = labels('drying', {
  ...entries('full', 'wanted', 'moisture', 'dryDays'),
  dusts: holding('time'),
  dustsAt: holding('moisture', 'time'),
})
type Context = ContextFor<typeof wording>

const [left, right, top, bottom] = [66, 386, 34, 246]

/** The curve in words. */
const numbers = ({ manual, words, q }: Context): string =>
  manual.charts.drying
    ? [
        `${words.full}: ${q('cushion.moisture.held')}`,
        `${words.wanted}: ${q('cushion.moisture.target')}, ${q('layer-dry.workable')}`,
        fill(words.dustsAt, { moisture: q('cushion.moisture.dusty'), time: q('layer-dry.dust') }),
      ].join('; ')
    : ''

/** Where a time and a moisture lie. */
type Scale = { readonly x: (time: number) => number; readonly y: (moisture: number) => number }

const scaleOf = ({ points, held }: DryingCurve): Scale => ({
  x: (time) => left + ((right - left) * time) / (points.at(-1)?.time ?? 1),
  y: (moisture) => bottom - ((bottom - top) * moisture) / (held * 1.06),
})

/** A moisture that is reached at a time, with lines to both axes. */
const level = ({ x, y }: Scale, moisture: number, printed: string, time: number): string =>
  [
    line([left, y(moisture)], [x(time), y(moisture)], 'line', dashed),
    line([x(time), y(moisture)], [x(time), bottom], 'thin', dashed),
    `<circle cx="${x(time).toFixed(1)}" cy="${y(moisture).toFixed(1)}" r="4.5" fill="currentColor"/>`,
    text([left - 8, y(moisture) + 5], printed, 'end', 16),
  ].join('')

/** The axes, with a mark for every so many days. */
function axes({ x }: Scale, { points }: DryingCurve): string {
  const days = (points.at(-1)?.time ?? 0) / secondsPerDay
  const every = [0.25, 0.5, 1, 2, 5, 10, 20].find((step) => days / step <= 7) ?? 50
  const marks = Array.from({ length: Math.floor(days / every) + 1 }, (_, i) => i * every)
  return [
    line([left, bottom], [right, bottom], 'bold'),
    line([left, top], [left, bottom], 'line'),
    ...marks.map((d) => {
      const at = x(d * secondsPerDay)
      return (
        line([at, bottom], [at, bottom + 6], 'line') +
        text([at, bottom + 22], String(d), 'middle', 15)
      )
    }),
  ].join('')
}

function draw({ manual, words, q, alt }: Context): string {
  const curve = manual.charts.drying
  if (!curve || curve.points.length === 0) return ''
  const scale = scaleOf(curve)
  const { x, y } = scale
  const line = curve.points.map((p): Point => [x(p.time), y(p.moisture)])
  return svg(
    400,
    296,
    alt,
    [
      text([8, 20], words.moisture, 'start', 16),
      polyline(line, 'bold', 'class="curve"'),
      text([left - 8, y(curve.held) + 5], q('cushion.moisture.held'), 'end', 16),
      level(scale, curve.target, q('cushion.moisture.target'), curve.workable),
      level(scale, curve.dusty, q('cushion.moisture.dusty'), curve.dust),
      text(
        [x(curve.workable) + 10, y(curve.target) - 6],
        `${words.wanted}: ${q('layer-dry.workable')}`,
        'start',
        16,
      ),
      // Below the curve, where nothing else stands.
      text(
        [x(curve.dust) - 8, Math.min(bottom - 7, y(curve.dusty) + 20)],
        fill(words.dusts, { time: q('layer-dry.dust') }),
        'end',
        16,
      ),
      axes(scale, curve),
      text([(left + right) / 2, bottom + 42], words.dryDays, 'middle', 16),
    ].join(''),
  )
}

/** Moisture of the bare cushion day by day, from full to dust, without rain and watering. */
export const drying = declareDrawing({ name: 'drying', labels: wording, draw, numbers })

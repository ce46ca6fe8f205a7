import { secondsPerDay } from '../../../model/day.ts'
import type { DrawingContext } from '../drawing-context.ts'
import { dashed, line, type Point, polyline, svg, text } from '../svg.ts'

const [left, right, top, bottom] = [66, 386, 34, 246]

/** The curve in words. */
export const dryingDetails = ({ manual, words, q }: DrawingContext): string =>
  manual.charts.drying
    ? [
        `${words.full}: ${q('cushion.moisture.held')}`,
        `${words.wanted}: ${q('cushion.moisture.target')}, ${q('layer-dry.workable')}`,
        `${words.dusts}: ${q('cushion.moisture.dusty')}, ${q('layer-dry.dust')} ${words.later}`,
      ].join('; ')
    : ''

/** Moisture of the bare cushion day by day, from full to dust, without rain and watering. */
export function dryingDrawing({ manual, words, q, caption }: DrawingContext): string {
  const curve = manual.charts.drying
  const last = curve?.points.at(-1)
  if (!curve || !last) return ''
  const x = (time: number): number => left + ((right - left) * time) / last.time
  const y = (moisture: number): number => bottom - ((bottom - top) * moisture) / (curve.held * 1.06)
  const level = (moisture: number, name: string, time: number): string =>
    [
      line([left, y(moisture)], [x(time), y(moisture)], 'line', dashed),
      line([x(time), y(moisture)], [x(time), bottom], 'thin', dashed),
      `<circle cx="${x(time).toFixed(1)}" cy="${y(moisture).toFixed(1)}" r="4.5" fill="currentColor"/>`,
      text([left - 8, y(moisture) + 5], q(name), 'end', 16),
    ].join('')
  const days = last.time / secondsPerDay
  const every = [0.25, 0.5, 1, 2, 5, 10, 20].find((step) => days / step <= 7) ?? 50
  const ticks = Array.from({ length: Math.floor(days / every) + 1 }, (_, i) => i * every)
  return svg(
    400,
    296,
    caption,
    [
      text([8, 20], words.moisture, 'start', 16),
      polyline(
        curve.points.map((p): Point => [x(p.time), y(p.moisture)]),
        'bold',
        'class="curve"',
      ),
      text([left - 8, y(curve.held) + 5], q('cushion.moisture.held'), 'end', 16),
      level(curve.target, 'cushion.moisture.target', curve.workable),
      level(curve.dusty, 'cushion.moisture.dusty', curve.dust),
      text(
        [x(curve.workable) + 10, y(curve.target) - 6],
        `${words.wanted}: ${q('layer-dry.workable')}`,
        'start',
        16,
      ),
      // Below the curve, where nothing else stands.
      text(
        [x(curve.dust) - 8, Math.min(bottom - 7, y(curve.dusty) + 20)],
        `${words.dusts}: ${q('layer-dry.dust')} ${words.later}`,
        'end',
        16,
      ),
      line([left, bottom], [right, bottom], 'bold'),
      line([left, top], [left, bottom], 'line'),
      ...ticks.map(
        (d) =>
          line([x(d * secondsPerDay), bottom], [x(d * secondsPerDay), bottom + 6], 'line') +
          text([x(d * secondsPerDay), bottom + 22], String(d), 'middle', 15),
      ),
      text([(left + right) / 2, bottom + 42], words.dryDays, 'middle', 16),
    ].join(''),
  )
}

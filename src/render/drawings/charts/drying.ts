import { secondsPerDay } from '../../../model/day.ts'
import type { DryingCurve } from '../../../model/manual/charts.ts'
import { fill } from '../../../model/pattern.ts'
import { entries, holding } from '../../../validate/schemas/words/group.ts'
import { type ContextFor, declareDrawing, labels } from '../drawing.ts'
import { disc, line, type Point, poly, sheetOf } from '../ink.ts'
import { say, widthOf } from '../letters.ts'
import { type DrawingSize, drawingWidths } from '../sizes.ts'

const wording = labels('drying', {
  ...entries('full', 'wanted', 'moisture', 'dryDays'),
  dusts: holding('time'),
  dustsAt: holding('moisture', 'time'),
})
type Context = ContextFor<typeof wording>

const size = 8.6

/** Where the axes lie, points. */
type Room = {
  readonly left: number
  readonly right: number
  readonly top: number
  readonly bottom: number
}

const roomOf = (of: DrawingSize): Room => ({
  left: 34,
  right: drawingWidths[of] - 8,
  top: 19,
  bottom: of === 'page' ? 118 : 112,
})

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
type Scale = Room & {
  readonly x: (time: number) => number
  readonly y: (moisture: number) => number
}

function scaleOf({ points, held }: DryingCurve, room: Room): Scale {
  const { left, right, top, bottom } = room
  return {
    ...room,
    x: (time) => left + ((right - left) * time) / (points.at(-1)?.time ?? 1),
    y: (moisture) => bottom - ((bottom - top) * moisture) / (held * 1.06),
  }
}

/** A moisture that is reached at a time, with lines to both axes. */
const level = ({ x, y, left, bottom }: Scale, moisture: number, printed: string, time: number) =>
  [
    line([left, y(moisture)], [x(time), y(moisture)], { pen: 0.8, dash: '3 2' }),
    line([x(time), y(moisture)], [x(time), bottom], { pen: 'hair', dash: '3 2' }),
    disc([x(time), y(moisture)], 2.4, { fill: 'ink', stroke: 'none' }),
    say([left - 4, y(moisture) + 3], printed, { anchor: 'end', size }),
  ].join('')

/** The axes, with a mark for every so many days. */
function axes({ x, left, right, top, bottom }: Scale, { points }: DryingCurve): string {
  const days = (points.at(-1)?.time ?? 0) / secondsPerDay
  const every = [0.25, 0.5, 1, 2, 5, 10, 20].find((step) => days / step <= 7) ?? 50
  const marks = Array.from({ length: Math.floor(days / every) + 1 }, (_, i) => i * every)
  return [
    line([left, bottom], [right, bottom], { pen: 1.6 }),
    line([left, top], [left, bottom]),
    ...marks.map((d) => {
      const at = x(d * secondsPerDay)
      return (
        line([at, bottom], [at, bottom + 3]) +
        say([at, bottom + 11.5], String(d), { anchor: 'middle', size })
      )
    }),
  ].join('')
}

/** What is said at the two moistures, clear of the curve: it falls to the right. */
function names(scale: Scale, curve: DryingCurve, { words, q }: Context): string {
  const { x, y, right, bottom } = scale
  const wanted = `${words.wanted}: ${q('layer-dry.workable')}`
  const dusts = fill(words.dusts, { time: q('layer-dry.dust') })
  const at = Math.min(x(curve.workable) + 6, right - widthOf(wanted, size))
  return (
    say([at, y(curve.target) - 4], wanted, { size, halo: true }) +
    say([x(curve.dust) - 5, Math.min(bottom - 4, y(curve.dusty) + 10.5)], dusts, {
      anchor: 'end',
      size,
      halo: true,
    })
  )
}

function draw(context: Context, of: DrawingSize): string {
  const { manual, words, q, alt } = context
  const curve = manual.charts.drying
  if (!curve || curve.points.length === 0) return ''
  const scale = scaleOf(curve, roomOf(of))
  const { x, y, left, right, bottom } = scale
  const points = curve.points.map((p): Point => [x(p.time), y(p.moisture)])
  return sheetOf(
    drawingWidths[of],
    bottom + 27,
    alt,
    [
      say([2, 9], words.moisture, { size }),
      poly(points, { pen: 1.8, name: 'curve' }),
      say([left - 4, y(curve.held) + 3], q('cushion.moisture.held'), { anchor: 'end', size }),
      level(scale, curve.target, q('cushion.moisture.target'), curve.workable),
      level(scale, curve.dusty, q('cushion.moisture.dusty'), curve.dust),
      names(scale, curve, context),
      axes(scale, curve),
      say([(left + right) / 2, bottom + 23], words.dryDays, { anchor: 'middle', size }),
    ].join(''),
  )
}

/** Moisture of the bare cushion day by day, from full to dust, without rain and watering. */
export const drying = declareDrawing({
  name: 'drying',
  labels: wording,
  draw,
  numbers,
})

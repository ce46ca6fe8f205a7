import type { RaceInterval } from '../../../model/manual/charts.ts'
import { fill } from '../../../model/pattern.ts'
import { entries, holding } from '../../../validate/schemas/words/group.ts'
import { type ContextFor, declareDrawing, labels } from '../drawing.ts'
import { box, dashed, hatchBox, line, svg, text } from '../svg.ts'

const wording = labels('race-interval', {
  ...entries(
    'trackClear',
    'trackOpen',
    'harrow',
    'rakes',
    'allOff',
    'nextRace',
    'water',
    'waterInstead',
    'horses',
    'afterFinish',
  ),
  laps: holding('count'),
})
type Context = ContextFor<typeof wording>

const [left, right, top, high, gap] = [118, 880, 70, 34, 52]

const waterName = ({ instead }: { readonly instead: boolean }, { words }: Context): string =>
  instead ? words.waterInstead : words.water

/** The interval in words, by the minute. */
function numbers(context: Context): string {
  const { manual, words, q } = context
  const at = manual.charts.interval
  if (!at) return ''
  const laps = (figure: string): string => fill(words.laps, { count: q(figure) })
  return [
    `${words.trackClear}: ${q('gap.clear')}`,
    at.laps > 0
      ? `${words.harrow}: ${q('gap.clear')}–${q('gap.harrowed')}, ${laps('gap.laps')}`
      : `${words.rakes}: ${q('gap.clear')}–${q('gap.off')}`,
    ...(at.water ? [`${waterName(at.water, context)} ${laps(at.water.figure)}`] : []),
    `${words.allOff}: ${q('gap.off')}`,
    `${words.trackOpen}: ${q('gap.open')}`,
    `${words.nextRace}: ${q('race-days.interval')}`,
  ].join('; ')
}

/** Where a time lies, in seconds after the finish. */
type X = (time: number) => number

/** A time in one of the rows, the first being that of the horses. */
type Stretch = { readonly row: number; readonly from: number; readonly to: number }

const bar = (x: X, { row, from, to }: Stretch, cls: string): string =>
  box([x(from), top + row * gap], x(to) - x(from), high, 'line', `class="${cls}"`)

const rowName = (row: number, name: string): string =>
  text([left - 12, top + row * gap + 23], name, 'end', 16, 'font-weight="700"')

/** Times at which horses are on the track. */
const horses = (x: X, from: number, to: number): string =>
  bar(x, { row: 0, from, to }, 'horses') + hatchBox([x(from), top], x(to) - x(from), high, 8)

/** Lines between the laps of a stretch. */
const lapLines = (x: X, { row, from, to }: Stretch, count: number): string =>
  Array.from({ length: Math.max(0, count - 1) }, (_, i) =>
    x(from + ((to - from) * (i + 1)) / count),
  )
    .map((at) => line([at, top + row * gap], [at, top + row * gap + high], 'thin', 'class="lap"'))
    .join('')

/** In the first lap where it has room; else behind the bar, clear of the lines that it may cross. */
function lapsLabel(x: X, { row, from, to }: Stretch, count: number, said: string): string {
  const inside = (x(to) - x(from)) / Math.max(1, count) > 80
  return text(
    [inside ? x(from) + 12 : x(to) + 8, top + row * gap + 23],
    said,
    'start',
    16,
    'paint-order="stroke" stroke="#fff" stroke-width="5"',
  )
}

/** Room that a call takes up beside its line. */
const callRoom = 200

/** What is called over the radio, and when. */
const call = (at: number, foot: number, said: string, anchor: 'start' | 'end'): string =>
  line([at, top - 14], [at, foot], 'line', dashed) +
  text([at + (anchor === 'start' ? -2 : 2), top - 22], said, anchor, 16, 'font-weight="700"')

function minuteMarks(x: X, interval: number, foot: number): string[] {
  const minutes = interval / 60
  const every = minutes > 40 ? 10 : minutes > 16 ? 5 : 2
  const marks = Array.from({ length: Math.floor(minutes / every) + 1 }, (_, i) => i * every)
  return marks.map(
    (m) =>
      line([x(m * 60), foot], [x(m * 60), foot + 7], 'line') +
      text([x(m * 60), foot + 24], String(m), 'middle', 15.5),
  )
}

/** Rows of the horses, the harrow and the water. */
function rows(x: X, at: RaceInterval, context: Context): string {
  const { words } = context
  const harrow = { row: 1, from: at.clear, to: at.laps > 0 ? at.harrowed : at.off }
  const water = at.water && { row: 2, from: at.water.from, to: at.water.to }
  return [
    rowName(0, words.horses),
    horses(x, 0, at.clear),
    horses(x, at.open, at.interval),
    rowName(1, at.laps > 0 ? words.harrow : words.rakes),
    bar(x, harrow, at.laps > 0 ? 'harrow' : 'rakes'),
    // More lines than these would be a grey field.
    at.laps <= 20 ? lapLines(x, harrow, at.laps) : '',
    at.water && water
      ? rowName(2, waterName(at.water, context)) +
        bar(x, water, 'water') +
        lapLines(x, water, at.water.laps)
      : '',
  ].join('')
}

/** How many laps the harrow and the water drive. */
function lapLabels(x: X, at: RaceInterval, { words, q }: Context): string {
  const said = (figure: string): string => fill(words.laps, { count: q(figure) })
  const harrow = { row: 1, from: at.clear, to: at.harrowed }
  return (
    (at.laps > 0 ? lapsLabel(x, harrow, at.laps, said('gap.laps')) : '') +
    (at.water ? lapsLabel(x, { row: 2, ...at.water }, at.water.laps, said(at.water.figure)) : '')
  )
}

function draw(context: Context): string {
  const { manual, words, q, alt } = context
  const at = manual.charts.interval
  if (!at) return ''
  const x: X = (s) => left + ((right - left) * s) / at.interval
  const foot = top + gap * (at.water ? 3 : 2) - 8
  return svg(
    900,
    foot + 58,
    alt,
    [
      rows(x, at, context),
      call(x(at.clear), foot, `${words.trackClear}: ${q('gap.clear')}`, 'start'),
      call(
        x(at.open),
        foot,
        `${words.trackOpen}: ${q('gap.open')}`,
        x(at.open) + callRoom < right ? 'start' : 'end',
      ),
      lapLabels(x, at, context),
      line([left, foot], [right, foot], 'bold'),
      ...minuteMarks(x, at.interval, foot),
      text([left, foot + 48], words.afterFinish, 'start', 15.5),
      text([right, foot + 48], `${words.nextRace}: ${q('race-days.interval')}`, 'end', 15.5),
    ].join(''),
  )
}

/** The minutes from the finish of one race to the next: whose the track is, and when. */
export const raceInterval = declareDrawing({
  name: 'race-interval',
  labels: wording,
  wide: true,
  draw,
  numbers,
})

import type { RaceInterval } from '../../../model/manual/charts.ts'
import { fill } from '../../../model/pattern.ts'
import { entries, holding } from '../../../validate/schemas/words/group.ts'
import { slanted } from '../boxes.ts'
import { type ContextFor, declareDrawing, labels } from '../drawing.ts'
import { line, sheetOf, slab } from '../ink.ts'
import { say, widthOf } from '../letters.ts'
import { type DrawingSize, drawingWidths } from '../sizes.ts'

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

const [size, high, gap] = [8.6, 16, 25]

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

/** Where a time lies, seconds after the finish, and where the first row stands. */
type Lay = {
  readonly left: number
  readonly right: number
  readonly top: number
  readonly foot: number
  readonly x: (time: number) => number
}

function layOf(at: RaceInterval, of: DrawingSize): Lay {
  const [left, right] = [of === 'page' ? 60 : 38, drawingWidths[of] - (of === 'page' ? 8 : 5)]
  // Where both calls have no room side by side, they stand in two lines.
  const top = of === 'page' ? 27 : 38
  return {
    left,
    right,
    top,
    foot: top + gap * (at.water ? 3 : 2) - 3,
    x: (time) => left + ((right - left) * time) / at.interval,
  }
}

/** A time in one of the rows, the first being that of the horses. */
type Stretch = { readonly row: number; readonly from: number; readonly to: number }

const bar = ({ x, top }: Lay, { row, from, to }: Stretch, name: string): string =>
  slab([x(from), top + row * gap], x(to) - x(from), high, { name })

const rowName = ({ left, top }: Lay, row: number, name: string): string =>
  say([left - 4, top + row * gap + 11], name, { anchor: 'end', size, bold: true })

/** Times at which horses are on the track. */
const horses = (lay: Lay, from: number, to: number): string =>
  slanted([lay.x(from), lay.top], [lay.x(to) - lay.x(from), high], 4) +
  bar(lay, { row: 0, from, to }, 'horses')

/** Lines between the laps of a stretch. */
const lapLines = ({ x, top }: Lay, { row, from, to }: Stretch, count: number): string =>
  Array.from({ length: Math.max(0, count - 1) }, (_, i) =>
    x(from + ((to - from) * (i + 1)) / count),
  )
    .map((at) =>
      line([at, top + row * gap], [at, top + row * gap + high], { pen: 'hair', name: 'lap' }),
    )
    .join('')

/** In the first lap where it has room; else behind the bar, clear of the lines that it may cross. */
function lapsLabel({ x, top }: Lay, { row, from, to }: Stretch, count: number, said: string) {
  const isInside = (x(to) - x(from)) / Math.max(1, count) > widthOf(said, size) + 8
  return say([isInside ? x(from) + 5 : x(to) + 4, top + row * gap + 11], said, { size, halo: true })
}

/** What is called over the radio, and when; `row` above the bars in which it is said. */
function call({ x, right, top, foot }: Lay, time: number, row: number, said: string): string {
  const at = x(time)
  const y = top - 9 - row * 11
  const isRight = at + widthOf(said, size, true) < right + 4
  return (
    line([at, y + 3], [at, foot], { dash: '3 2' }) +
    say([at + (isRight ? -1 : 1), y], said, {
      anchor: isRight ? 'start' : 'end',
      size,
      bold: true,
      halo: true,
    })
  )
}

function minuteMarks({ x, left, right, foot }: Lay, interval: number): string {
  const minutes = interval / 60
  const room = (right - left) / 24
  const every = [1, 2, 5, 10, 20].find((step) => minutes / step <= Math.min(room, 16)) ?? 30
  const marks = Array.from({ length: Math.floor(minutes / every) + 1 }, (_, i) => i * every)
  return marks
    .map(
      (m) =>
        line([x(m * 60), foot], [x(m * 60), foot + 3.5]) +
        say([x(m * 60), foot + 12.5], String(m), { anchor: 'middle', size }),
    )
    .join('')
}

/** Rows of the horses, the harrow and the water. */
function rows(lay: Lay, at: RaceInterval, context: Context): string {
  const { words } = context
  const harrow = { row: 1, from: at.clear, to: at.laps > 0 ? at.harrowed : at.off }
  const water = at.water && { row: 2, from: at.water.from, to: at.water.to }
  return [
    rowName(lay, 0, words.horses),
    horses(lay, 0, at.clear),
    horses(lay, at.open, at.interval),
    rowName(lay, 1, at.laps > 0 ? words.harrow : words.rakes),
    bar(lay, harrow, at.laps > 0 ? 'harrow' : 'rakes'),
    // More lines than these would be a grey field.
    at.laps <= 20 ? lapLines(lay, harrow, at.laps) : '',
    at.water && water
      ? rowName(lay, 2, waterName(at.water, context)) +
        bar(lay, water, 'water') +
        lapLines(lay, water, at.water.laps)
      : '',
  ].join('')
}

/** How many laps the harrow and the water drive. */
function lapLabels(lay: Lay, at: RaceInterval, { words, q }: Context): string {
  const said = (figure: string): string => fill(words.laps, { count: q(figure) })
  const harrow = { row: 1, from: at.clear, to: at.harrowed }
  return (
    (at.laps > 0 ? lapsLabel(lay, harrow, at.laps, said('gap.laps')) : '') +
    (at.water ? lapsLabel(lay, { row: 2, ...at.water }, at.water.laps, said(at.water.figure)) : '')
  )
}

function draw(context: Context, of: DrawingSize): string {
  const { manual, words, q, alt } = context
  const at = manual.charts.interval
  if (!at) return ''
  const lay = layOf(at, of)
  const { left, right, foot } = lay
  const next = `${words.nextRace}: ${q('race-days.interval')}`
  const open = `${words.trackOpen}: ${q('gap.open')}`
  const below = foot + 24
  return sheetOf(
    drawingWidths[of],
    below + (of === 'side' ? 15 : 4),
    alt,
    [
      rows(lay, at, context),
      call(lay, at.clear, of === 'page' ? 0 : 1, `${words.trackClear}: ${q('gap.clear')}`),
      call(lay, at.open, 0, open),
      lapLabels(lay, at, context),
      line([left, foot], [right, foot], { pen: 1.6 }),
      minuteMarks(lay, at.interval),
      say([left, below], words.afterFinish, { size }),
      say([right, below + (of === 'side' ? 11 : 0)], next, { anchor: 'end', size }),
    ].join(''),
  )
}

/** The minutes from the finish of one race to the next: whose the track is, and when. */
export const raceInterval = declareDrawing({
  name: 'race-interval',
  labels: wording,
  draw,
  numbers,
})

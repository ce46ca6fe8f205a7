import type { CountdownDay } from '../../../model/manual/charts.ts'
import { entries } from '../../../validate/schemas/words/group.ts'
import { slanted } from '../boxes.ts'
import { type ContextFor, declareDrawing, labels } from '../drawing.ts'
import { line, type Point, sheetOf, slab } from '../ink.ts'
import { say, wrapped } from '../letters.ts'
import { type DrawingSize, drawingWidths } from '../sizes.ts'

const wording = labels('countdown', entries('raceDay', 'past', 'beforeThat', 'afterFair'))
type Context = ContextFor<typeof wording>

const [size, leading] = [8.4, 9.7]

/** Room for a box to tick before a task. */
const indent = 8.5

/** Words of a cell or a list, in lines that have room beside a box to tick. */
export const taskLines = (words: string, width: number): readonly string[] =>
  wrapped(words, width - indent, size)

const tick = ([x, y]: Point): string => slab([x, y - 5.6], 5.2, 5.2, { pen: 'hair' })

/** A task with its box to tick, from its first line down. */
const taskAt = ([x, y]: Point, lines: readonly string[]): string =>
  tick([x, y]) +
  lines.map((words, i) => say([x + indent, y + i * leading], words, { size })).join('')

type Dated = { readonly date: string; readonly task: string }

/** Tasks outside the calendar, those of a day together. */
function byDate(tasks: readonly Dated[]): readonly string[] {
  const days = new Map<string, string[]>()
  for (const { date, task } of tasks) days.set(date, [...(days.get(date) ?? []), task])
  return [...days].map(([date, list]) => `${date} – ${list.join('; ')}`)
}

/** The calendar in words: what is due before it, in it and after it. */
function numbers({ manual, words }: Context): string {
  const calendar = manual.charts.countdown
  if (!calendar) return ''
  const days = calendar.weeks
    .flat()
    .map((d) => ({ ...d, date: d.isPast ? `${d.text} (${words.past})` : d.text }))
    .flatMap((d) => [
      ...(d.isRaceDay ? [`${d.date}: ${words.raceDay}`] : []),
      ...d.tasks.map((t) => `${d.date}: ${t}`),
    ])
  return [...byDate(calendar.earlier), ...days, ...byDate(calendar.later)].join('; ')
}

/** A part of the drawing, and where the next one begins. */
type Part = { readonly drawn: string; readonly end: number }

type Sheet = { readonly width: number; readonly words: Context['words'] }

/** Tasks outside the weeks of the calendar, below a head. */
function taskList(y: number, head: string, tasks: readonly Dated[], { width }: Sheet): Part {
  if (tasks.length === 0) return { drawn: '', end: y }
  // Where there is no room for them beside the head, they stand below it.
  const isBeside = width > 300
  const from = y + leading * (isBeside ? 1 : 2) + 1
  const indented = isBeside ? 58 : 6
  const lines = byDate(tasks).flatMap((t) => wrapped(t, width - indented - 2, size))
  return {
    drawn: [
      say([1, y + leading + 1], head, { size, bold: true }),
      ...lines.map((words, i) => say([indented, from + i * leading], words, { size })),
    ].join(''),
    end: from + (lines.length - 1) * leading + 5,
  }
}

const cellWide = ({ width }: Sheet): number => (width - 2) / 7

const cellLines = (day: CountdownDay, sheet: Sheet): readonly (readonly string[])[] =>
  day.tasks.map((t) => taskLines(t, cellWide(sheet) - 5))

/** How many lines a cell holds, the words “race day” and “past” among them. */
const linesIn = (day: CountdownDay, sheet: Sheet): number =>
  cellLines(day, sheet).flat().length + (day.isRaceDay ? 1 : 0) + (day.isPast ? 1 : 0)

/** One day: its date, and its tasks with a box to tick before each. */
function dayCell(day: CountdownDay, [x, y]: Point, high: number, sheet: Sheet): string {
  const wide = cellWide(sheet)
  let at = y + 20 + (day.isRaceDay ? leading : 0)
  const tasks = cellLines(day, sheet).map((lines) => {
    const drawn = taskAt([x + 3, at], lines)
    at += lines.length * leading
    return drawn
  })
  return [
    slab([x, y], wide, high, { pen: 'hair', name: day.isRaceDay ? 'race-day' : 'day' }),
    // A day that is over is crossed out as on a calendar at the wall; what was due stays readable.
    day.isPast
      ? line([x, y + high], [x + wide, y], { pen: 'hair', name: 'past' }) +
        say([x + wide - 3, y + high - 3], sheet.words.past, { anchor: 'end', size, halo: true })
      : '',
    ...(day.isRaceDay
      ? [
          slanted([x + 30, y + 2.5], [wide - 33, 7.5], 3.6),
          slab([x + 0.8, y + 0.8], wide - 1.6, high - 1.6, { pen: 1.6 }),
          say([x + 3, y + 20], sheet.words.raceDay, { size, bold: true }),
        ]
      : []),
    say([x + 3, y + 9.5], day.label, { size, bold: true }),
    ...tasks,
  ].join('')
}

function weekRow(y: number, week: readonly CountdownDay[], sheet: Sheet): Part {
  const high = 15 + Math.max(4, ...week.map((day) => linesIn(day, sheet))) * leading
  const wide = cellWide(sheet)
  return {
    drawn: week.map((day, i) => dayCell(day, [1 + i * wide, y], high, sheet)).join(''),
    end: y + high,
  }
}

/** Names of the days of a week, with the line below them. */
const weekHead = (y: number, weekdays: readonly string[], sheet: Sheet): Part => ({
  drawn: [
    ...weekdays.map((name, i) => say([4 + i * cellWide(sheet), y + 9], name, { size, bold: true })),
    line([1, y + 12], [sheet.width - 1, y + 12], { pen: 1.6 }),
  ].join(''),
  end: y + 12,
})

/** Each part begins where the one above it ends. */
const stacked = (makers: readonly ((y: number) => Part)[]): Part =>
  makers.reduce<Part>(
    (above, make) => {
      const part = make(above.end)
      return { drawn: above.drawn + part.drawn, end: part.end }
    },
    { drawn: '', end: 2 },
  )

/** One day of the list: its date, below it what is due. */
const dayOfList =
  (day: CountdownDay, { width, words }: Sheet) =>
  (y: number): Part => {
    let at = y + leading + 2
    const date = day.isPast ? `${day.text} (${words.past})` : day.text
    const name = day.isRaceDay ? `${date}: ${words.raceDay}` : date
    const head =
      say([1, at], name, { size, bold: true }) +
      (day.isRaceDay ? slanted([width - 44, at - 7], [43, 7.5], 3.6) : '')
    const tasks = day.tasks.map((t) => {
      const lines = taskLines(t, width - 8)
      at += leading
      const drawn = taskAt([6, at], lines)
      at += (lines.length - 1) * leading
      return drawn
    })
    return { drawn: head + tasks.join(''), end: at + 3 }
  }

/** Where a week has no room for seven cells: the days on which something is due, in their order. */
function listed(context: Context, sheet: Sheet): Part {
  const { countdown } = context.manual.charts
  const days = countdown?.weeks.flat().filter((d) => d.isRaceDay || d.tasks.length > 0) ?? []
  return stacked([
    (y) => taskList(y, sheet.words.beforeThat, countdown?.earlier ?? [], sheet),
    ...days.map((day) => dayOfList(day, sheet)),
    (y) => taskList(y, sheet.words.afterFair, countdown?.later ?? [], sheet),
  ])
}

function draw(context: Context, of: DrawingSize): string {
  const { manual, words, alt } = context
  const calendar = manual.charts.countdown
  if (!calendar) return ''
  const sheet = { width: drawingWidths[of], words }
  const { drawn, end } =
    of === 'page'
      ? stacked([
          (y) => taskList(y, words.beforeThat, calendar.earlier, sheet),
          (y) => weekHead(y, calendar.weekdays, sheet),
          ...calendar.weeks.map((week) => (y: number) => weekRow(y, week, sheet)),
          (y) => taskList(y, words.afterFair, calendar.later, sheet),
        ])
      : listed(context, sheet)
  return sheetOf(sheet.width, end + 4, alt, drawn)
}

/** The weeks before the fair as a calendar with room to pencil in; as a list where it is narrow. */
export const countdown = declareDrawing({
  name: 'countdown',
  labels: wording,
  draw,
  numbers,
})

import type { CountdownDay } from '../../../model/manual/charts.ts'
import { entries } from '../../../validate/schemas/words/group.ts'
import { type ContextFor, declareDrawing, labels } from '../drawing.ts'
import { box, hatchBox, line, svg, text } from '../svg.ts'

const wording = labels('countdown', entries('raceDay', 'past', 'beforeThat', 'afterFair'))
type Context = ContextFor<typeof wording>

const [left, right] = [2, 898]
const wide = (right - left) / 7
const [size, leading] = [15.5, 18]

/** Room for a box to tick before a task. */
const indent = 15

/** Letters that fit into a cell beside its margins, by the mean width of a letter. */
const lettersAcross = Math.floor((wide - 12 - indent) / (0.49 * size))

/** Words broken into lines that a cell has room for. */
export function wrapWords(words: string, letters = lettersAcross): readonly string[] {
  return words.split(' ').reduce<string[]>((lines, word) => {
    const last = lines.at(-1)
    if (last !== undefined && `${last} ${word}`.length <= letters)
      lines[lines.length - 1] = `${last} ${word}`
    else lines.push(word)
    return lines
  }, [])
}

/** Lines of the tasks in a cell; the first of each has a box to tick. */
const linesOf = (
  day: CountdownDay,
): readonly { readonly words: string; readonly begins: boolean }[] =>
  day.tasks.flatMap((t) => wrapWords(t).map((words, i) => ({ words, begins: i === 0 })))

/** How many lines a cell holds, the words “race day” and “past” among them. */
const linesIn = (day: CountdownDay): number =>
  linesOf(day).length + (day.isRaceDay ? 1 : 0) + (day.isPast ? 1 : 0)

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
    .map((d) => ({ ...d, date: d.isPast ? `${d.date} (${words.past})` : d.date }))
    .flatMap((d) => [
      ...(d.isRaceDay ? [`${d.date}: ${words.raceDay}`] : []),
      ...d.tasks.map((t) => `${d.date}: ${t}`),
    ])
  return [...byDate(calendar.earlier), ...days, ...byDate(calendar.later)].join('; ')
}

/** A part of the drawing, and where the next one begins. */
type Part = { readonly drawn: string; readonly end: number }

/** Tasks outside the weeks of the calendar, below a head. */
function taskList(y: number, head: string, tasks: readonly Dated[]): Part {
  if (tasks.length === 0) return { drawn: '', end: y }
  const from = y + leading + 2
  const indented = left + 110
  const lines = byDate(tasks).flatMap((t) =>
    wrapWords(t, Math.floor((right - indented) / (0.49 * size))),
  )
  return {
    drawn: [
      text([left, from], head, 'start', size, 'font-weight="600"'),
      ...lines.map((words, i) => text([indented, from + i * leading], words, 'start', size)),
    ].join(''),
    end: from + (lines.length - 1) * leading + 10,
  }
}

/** A day that is over, crossed out as on a calendar at the wall; what was due stays readable. */
const crossedOut = (x: number, y: number, high: number, past: string): string =>
  [
    line([x, y + high], [x + wide, y], 'thin', 'class="past"'),
    text([x + wide - 6, y + high - 6], past, 'end', size),
  ].join('')

/** One day: its date, and its tasks with a box to tick before each. */
function dayCell(
  day: CountdownDay,
  x: number,
  y: number,
  high: number,
  { raceDay, past }: Context['words'],
): string {
  const from = y + 38 + (day.isRaceDay ? leading : 0)
  return [
    box([x, y], wide, high, 'thin', `class="${day.isRaceDay ? 'race-day' : 'day'}"`),
    day.isPast ? crossedOut(x, y, high, past) : '',
    ...(day.isRaceDay
      ? [
          hatchBox([x + 58, y + 5], wide - 64, 14, 7),
          box([x + 1.5, y + 1.5], wide - 3, high - 3, 'bold'),
        ]
      : []),
    text([x + 6, y + 18], day.label, 'start', 15.5, 'font-weight="600"'),
    day.isRaceDay ? text([x + 6, y + 38], raceDay, 'start', size, 'font-weight="600"') : '',
    ...linesOf(day).flatMap(({ words, begins }, k) => [
      begins ? box([x + 6, from + k * leading - 9.5], 9, 9, 'thin') : '',
      text([x + 6 + indent, from + k * leading], words, 'start', size),
    ]),
  ].join('')
}

function weekRow(y: number, week: readonly CountdownDay[], words: Context['words']): Part {
  const high = 30 + Math.max(4, ...week.map(linesIn)) * leading
  return {
    drawn: week.map((day, i) => dayCell(day, left + i * wide, y, high, words)).join(''),
    end: y + high,
  }
}

/** Names of the days of a week, with the line below them. */
const weekHead = (y: number, weekdays: readonly string[]): Part => ({
  drawn: [
    ...weekdays.map((name, i) =>
      text([left + i * wide + 6, y + 16], name, 'start', 15.5, 'font-weight="600"'),
    ),
    line([left, y + 22], [right, y + 22], 'bold'),
  ].join(''),
  end: y + 22,
})

function draw({ manual, words, alt }: Context): string {
  const calendar = manual.charts.countdown
  if (!calendar) return ''
  const makers: readonly ((y: number) => Part)[] = [
    (y) => taskList(y, words.beforeThat, calendar.earlier),
    (y) => weekHead(y, calendar.weekdays),
    ...calendar.weeks.map((week) => (y: number) => weekRow(y, week, words)),
    (y) => taskList(y, words.afterFair, calendar.later),
  ]
  // Each part begins where the one above it ends.
  const { drawn, end } = makers.reduce<Part>(
    (above, make) => {
      const part = make(above.end)
      return { drawn: above.drawn + part.drawn, end: part.end }
    },
    { drawn: '', end: 4 },
  )
  return svg(900, end + 6, alt, drawn)
}

/** The weeks before the fair as a calendar with room to pencil in. */
export const countdown = declareDrawing({
  name: 'countdown',
  labels: wording,
  wide: true,
  draw,
  numbers,
})

import type { CountdownDay } from '../../../model/charts.ts'
import type { DrawingContext } from '../drawing-context.ts'
import { box, hatchBox, line, svg, text } from '../svg.ts'

const [left, right] = [2, 898]
const wide = (right - left) / 7
const [size, leading] = [14.5, 17]

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

/** How many lines a cell holds, the words “race day” among them. */
const linesIn = (day: CountdownDay): number => linesOf(day).length + (day.isRaceDay ? 1 : 0)

type Dated = { readonly date: string; readonly task: string }

/** Tasks outside the calendar, those of a day together. */
function byDate(tasks: readonly Dated[]): readonly string[] {
  const days = new Map<string, string[]>()
  for (const { date, task } of tasks) days.set(date, [...(days.get(date) ?? []), task])
  return [...days].map(([date, list]) => `${date} – ${list.join('; ')}`)
}

/** The calendar in words: what is due before it, in it and after it. */
export function countdownDetails({ manual, words }: DrawingContext): string {
  const calendar = manual.charts.countdown
  if (!calendar) return ''
  const days = calendar.weeks
    .flat()
    .flatMap((d) => [
      ...(d.isRaceDay ? [`${d.date}: ${words.raceDay}`] : []),
      ...d.tasks.map((t) => `${d.date}: ${t}`),
    ])
  return [...byDate(calendar.earlier), ...days, ...byDate(calendar.later)].join('; ')
}

/** The weeks before the fair as a calendar with room to pencil in. */
export function countdownDrawing({ manual, words, caption }: DrawingContext): string {
  const calendar = manual.charts.countdown
  if (!calendar) return ''
  const raceDay = words.raceDay
  const out: string[] = []
  let y = 4
  const list = (head: string, tasks: readonly Dated[]): void => {
    if (tasks.length === 0) return
    y += leading + 2
    const indented = left + 110
    out.push(text([left, y], head, 'start', size, 'font-weight="600"'))
    byDate(tasks)
      .flatMap((t) => wrapWords(t, Math.floor((right - indented) / (0.49 * size))))
      .forEach((words, i) => {
        if (i > 0) y += leading
        out.push(text([indented, y], words, 'start', size))
      })
    y += 10
  }
  list(words.beforeThat, calendar.earlier)
  y += 20
  calendar.weekdays.forEach((name, i) =>
    out.push(text([left + i * wide + 6, y - 4], name, 'start', 15.5, 'font-weight="600"')),
  )
  out.push(line([left, y + 2], [right, y + 2], 'bold'))
  y += 2
  for (const week of calendar.weeks) {
    const high = 30 + Math.max(4, ...week.map(linesIn)) * leading
    week.forEach((day, i) => {
      const x = left + i * wide
      out.push(box([x, y], wide, high, 'thin', `class="${day.isRaceDay ? 'race-day' : 'day'}"`))
      if (day.isRaceDay)
        out.push(
          hatchBox([x + 58, y + 5], wide - 64, 14, 7),
          box([x + 1.5, y + 1.5], wide - 3, high - 3, 'bold'),
        )
      out.push(text([x + 6, y + 18], day.label, 'start', 15.5, 'font-weight="600"'))
      const from = y + 38 + (day.isRaceDay ? leading : 0)
      if (day.isRaceDay)
        out.push(text([x + 6, y + 38], raceDay, 'start', size, 'font-weight="600"'))
      linesOf(day).forEach(({ words, begins }, k) => {
        if (begins) out.push(box([x + 6, from + k * leading - 9.5], 9, 9, 'thin'))
        out.push(text([x + 6 + indent, from + k * leading], words, 'start', size))
      })
    })
    y += high
  }
  list(words.afterFair, calendar.later)
  return svg(900, y + 6, caption, out.join(''))
}

import { addDays, dayOfMonth, secondsPerDay } from '../../model/day.ts'
import type { Countdown, CountdownDay } from '../../model/manual/charts.ts'
import { type ComposeContext, itemsOf } from '../context.ts'
import {
  type Dating,
  dayAndMonth,
  dueDate,
  isPast,
  placeInWeek,
  raceWeek,
  shortDate,
  weekdaysOf,
} from '../dates.ts'
import { datedRows, raceIsClose } from '../schedules/dated-rows.ts'
import { workTasks } from '../schedules/work-rows.ts'

type Task = { readonly date: string; readonly task: string }

/**
 * What is due when, in the few words that a calendar has room for: rows of the countdown, and where
 * the first race is close the work of the last days in place of those that it covers.
 */
export const tasksOf = (context: ComposeContext): readonly Task[] =>
  [...(raceIsClose(context) ? workTasks(context) : []), ...countdownTasks(context)].sort((a, b) =>
    a.date.localeCompare(b.date),
  )

const countdownTasks = (context: ComposeContext): readonly Task[] =>
  datedRows(
    itemsOf(context.library.schedules)
      .filter((s) => s.id === 'countdown')
      .flatMap((s) => s.tables.flatMap((t) => t.rows ?? [])),
    context,
  ).flatMap(({ date, row }) =>
    row.short === undefined || date === undefined ? [] : [{ date, task: row.short }],
  )

/** All days from one date to another. */
function daysBetween(start: string, end: string): readonly string[] {
  const dates: string[] = []
  for (let date = start; date <= end; date = addDays(date, 1)) dates.push(date)
  return dates
}

/** The first day and the first of a month also name their month. */
const dayLabel = (date: string, isFirst: boolean, dating: Dating): string =>
  isFirst || dayOfMonth(date) === 1 ? dayAndMonth(date, dating) : String(dayOfMonth(date))

/**
 * The weeks before the fair with what is due on each day; undefined where no race days are given,
 * or nothing is due.
 */
export function composeCountdown(context: ComposeContext): Countdown | undefined {
  const { engine, facility, locale } = context
  const { system } = locale
  const week = raceWeek(facility.file)
  const tasks = tasksOf(context)
  if (!week || tasks.length === 0) return undefined
  const lead = (engine.si('practice.prepare-before') ?? 0) / secondsPerDay
  const first = addDays(week.first, -lead)
  const start = addDays(first, -placeInWeek(first, system))
  const end = addDays(week.last, 6 - placeInWeek(week.last, system))
  const raceDays = new Set((facility.file['race-days'] ?? []).map((d) => d.date))
  const days = daysBetween(start, end).map(
    (date): CountdownDay => ({
      date,
      text: shortDate(date, context),
      label: dayLabel(date, date === start, context),
      isRaceDay: raceDays.has(date),
      isPast: isPast(date, context),
      tasks: tasks.filter((t) => t.date === date).map((t) => t.task),
    }),
  )
  const listed = (keep: (date: string) => boolean): readonly Task[] =>
    tasks.filter((t) => keep(t.date)).map((t) => ({ date: dueDate(t.date, context), task: t.task }))
  return {
    weekdays: weekdaysOf(context),
    weeks: Array.from({ length: days.length / 7 }, (_, i) => days.slice(i * 7, i * 7 + 7)),
    earlier: listed((date) => date < start),
    later: listed((date) => date > end),
  }
}

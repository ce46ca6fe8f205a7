import type { Countdown, CountdownDay } from '../../model/charts.ts'
import { addDays, dayOfMonth, secondsPerDay } from '../../model/day.ts'
import { datedRows } from './dated-rows.ts'
import { dayAndMonth, placeInWeek, raceWeek, shortDate, weekdaysOf } from './dates.ts'
import { numberOf, type PlanContext } from './plan-context.ts'

/**
 * The weeks before the fair with what is due on each day; undefined where no race days are given,
 * or nothing is due.
 */
export function composeCountdown(context: PlanContext): Countdown | undefined {
  const { file } = context.facility
  const week = raceWeek(file)
  const rows =
    context.plans.find((p) => p.id === 'countdown')?.tables.flatMap((t) => t.rows ?? []) ?? []
  const tasks = datedRows(rows, context.computed.engine, context).flatMap(({ date, row }) =>
    row.short === undefined || date === undefined ? [] : [{ date, task: row.short }],
  )
  if (!week || tasks.length === 0) return undefined
  const { system } = context.computed.locale
  const lead = (numberOf(context.computed.engine, 'practice.prepare-before') ?? 0) / secondsPerDay
  const first = addDays(week.first, -lead)
  const start = addDays(first, -placeInWeek(first, system))
  const end = addDays(week.last, 6 - placeInWeek(week.last, system))
  const raceDays = new Set((file['race-days'] ?? []).map((d) => d.date))
  const days: CountdownDay[] = []
  for (let date = start; date <= end; date = addDays(date, 1)) {
    days.push({
      date,
      label:
        date === start || date.endsWith('-01')
          ? dayAndMonth(date, system)
          : String(dayOfMonth(date)),
      isRaceDay: raceDays.has(date),
      tasks: tasks.filter((t) => t.date === date).map((t) => t.task),
    })
  }
  const listed = (keep: (date: string) => boolean) =>
    tasks
      .filter((t) => keep(t.date))
      .map((t) => ({ date: shortDate(t.date, system), task: t.task }))
  return {
    weekdays: weekdaysOf(system),
    weeks: Array.from({ length: days.length / 7 }, (_, i) => days.slice(i * 7, i * 7 + 7)),
    earlier: listed((date) => date < start),
    later: listed((date) => date > end),
  }
}

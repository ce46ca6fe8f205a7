import type { ManualSchedule, ManualTable, TableRows } from '../../model/manual/schedule.ts'
import type { ScheduleTable } from '../../validate/schemas/plans.ts'
import { applies } from '../applies.ts'
import { type ComposeContext, filled, isKnown, itemsOf } from '../context.ts'
import { shortDate } from '../dates.ts'
import { datedRows } from './dated-rows.ts'
import { raceDayGroups } from './race-day-groups.ts'
import { rowMakers } from './row-makers.ts'

function rowsOf(table: ScheduleTable, context: ComposeContext): TableRows {
  if (table.from) return rowMakers[table.from](context)
  return datedRows(table.rows ?? [], context).map(({ row, date }) =>
    date === undefined ? row.cells : [shortDate(date, context), ...row.cells],
  )
}

/** A table for each race day that differs from the others, with its dates in the title. */
const byRaceDay = (table: ScheduleTable, context: ComposeContext): ManualTable[] =>
  raceDayGroups(context).map(({ dates, context: day }, i) => ({
    id: `${table.id}-${i + 1}`,
    title: `${table.title}: ${dates}`,
    about: i === 0 ? table.about : undefined,
    heads: table.heads,
    rows: rowsOf(table, day).map((cells) => cells.map((c) => filled(c, day))),
  }))

function composeTable(table: ScheduleTable, context: ComposeContext): ManualTable[] {
  if (table['each-race-day'] || table.from === 'race-day-hours') return byRaceDay(table, context)
  const { id, title, about, heads } = table
  return [{ id, title, about, heads, rows: rowsOf(table, context) }]
}

/** The schedules that this facility's facts allow, with their tables. */
export const composeSchedules = (context: ComposeContext): readonly ManualSchedule[] =>
  itemsOf(context.library.schedules)
    .filter(
      (s) =>
        applies(s.when, context.here) && (s.needs ?? []).every((name) => isKnown(name, context)),
    )
    .map((s) => ({
      id: s.id,
      title: s.title,
      about: s.about,
      drawings: s.drawings ?? [],
      tables: s.tables.flatMap((t) => composeTable(t, context)).filter((t) => t.rows.length > 0),
    }))
    .filter((s) => s.tables.length > 0)

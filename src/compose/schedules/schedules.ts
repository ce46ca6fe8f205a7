import type { ManualSchedule, ManualTable, TableRows } from '../../model/manual/schedule.ts'
import { namesIn } from '../../model/placeholders.ts'
import type { Schedule, ScheduleTable } from '../../validate/schemas/plans.ts'
import { applies } from '../applies.ts'
import { type ComposeContext, filled, isEstimate, isKnown, itemsOf } from '../context.ts'
import { dueDate } from '../dates.ts'
import { foundOn } from '../findings.ts'
import { datedRows, raceIsClose } from './dated-rows.ts'
import { raceDayGroups } from './race-day-groups.ts'
import { madeFrom, rowMakers } from './row-makers.ts'

function rowsOf(table: ScheduleTable, context: ComposeContext): TableRows {
  if (table.from) return rowMakers[table.from](context)
  return datedRows(table.rows ?? [], context).map(({ row, date }) =>
    date === undefined ? row.cells : [dueDate(date, context), ...row.cells],
  )
}

/** What a table says on some race days, with their dates. */
type Said = {
  readonly dates: string
  readonly day: ComposeContext
  readonly rows: TableRows
  readonly estimate: boolean
}

/** Whether any number in the rows is an estimate: those named in cells, or what made the rows. */
const restsOnUsual = (
  { from }: ScheduleTable,
  rows: TableRows,
  context: ComposeContext,
): boolean => {
  const names = from ? (madeFrom[from] ?? []) : rows.flat().flatMap(namesIn)
  return names.some((name) => isEstimate(name, context))
}

/** Race days on which a table says the same share one, under all their dates. */
function saidByDay(table: ScheduleTable, context: ComposeContext): readonly Said[] {
  const said = new Map<string, Said>()
  for (const group of raceDayGroups(context)) {
    const { dates } = group
    const day = { ...group.context, found: foundOn(group) }
    const named = rowsOf(table, day)
    const rows = named.map((cells) => cells.map((c) => filled(c, day)))
    const key = JSON.stringify(rows)
    const same = said.get(key)
    if (rows.length > 0)
      said.set(
        key,
        same
          ? { ...same, dates: `${same.dates}; ${dates}` }
          : { dates, day, rows, estimate: restsOnUsual(table, named, day) },
      )
  }
  return [...said.values()]
}

/** A table for each race day that differs from the others, with its dates in the title. */
const byRaceDay = (table: ScheduleTable, context: ComposeContext): ManualTable[] =>
  saidByDay(table, context).map(({ dates, day, rows, estimate }, i) => ({
    id: `${table.id}-${i + 1}`,
    title: `${table.title}: ${dates}`,
    about: i === 0 && table.about !== undefined ? filled(table.about, day) : undefined,
    days: dates,
    heads: table.heads,
    rows,
    estimate,
  }))

function composeTable(table: ScheduleTable, context: ComposeContext): ManualTable[] {
  if (table['each-race-day'] || table.from === 'race-day-hours') return byRaceDay(table, context)
  const { id, title, about, heads } = table
  const rows = rowsOf(table, context)
  // Where cells name their figures, each carries its own mark.
  const estimate = table.from !== undefined && restsOnUsual(table, rows, context)
  return [{ id, title, about, days: undefined, heads, rows, estimate }]
}

/** Schedules that this facility's facts allow, with their tables. */
const composed = (context: ComposeContext, reader: Schedule['for']): readonly ManualSchedule[] =>
  itemsOf(context.library.schedules)
    .filter(
      (s) =>
        s.for === reader &&
        applies(s.when, context.here) &&
        (s.needs ?? []).every((name) => isKnown(name, context)),
    )
    .map((s) => ({
      id: s.id,
      title: s.title,
      about: (raceIsClose(context) ? s['about-close'] : undefined) ?? s.about,
      drawings: s.drawings ?? [],
      tables: s.tables.flatMap((t) => composeTable(t, context)).filter((t) => t.rows.length > 0),
    }))
    .filter((s) => s.tables.length > 0)

/** The plans, in their order. */
export const composeSchedules = (context: ComposeContext): readonly ManualSchedule[] =>
  composed(context, undefined)

/** What the board is asked for, beside the findings. */
export const composeBoard = (context: ComposeContext): readonly ManualSchedule[] =>
  composed(context, 'board')

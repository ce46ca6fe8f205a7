import { secondsPerDay } from '../../model/day.ts'
import type { CalendarEntry } from '../../model/manual/calendar.ts'
import { fill } from '../../model/pattern.ts'
import type { Calendar } from '../../validate/schemas/calendars.ts'
import type { ScheduleRow, ScheduleTable } from '../../validate/schemas/plans.ts'
import { type ComposeContext, filled, itemsOf, namedNumber } from '../context.ts'
import { datedRows } from '../schedules/dated-rows.ts'
import type { eachRaceDay } from '../schedules/race-day-groups.ts'
import { hoursOf } from './hours.ts'

/** A race day, and what it is composed with. */
type Day = ReturnType<typeof eachRaceDay>[number]

/** What a row is known by in every revision: its words, without numbers of this facility. */
const keyOf = ({ short, cells }: ScheduleRow): string =>
  (short ?? cells[0] ?? '')
    .toLowerCase()
    .replace(/\{[^}]*\}|\([^)]*\)/g, ' ')
    .replace(/[^a-z0-9]+/g, ' ')
    .trim()
    .replaceAll(' ', '-')
    .slice(0, 60)

/** Rows with the same words are told apart by their place among them. */
function numbered(entries: readonly CalendarEntry[]): readonly CalendarEntry[] {
  const seen = new Map<string, number>()
  return entries.map((entry) => {
    const times = (seen.get(entry.id) ?? 0) + 1
    seen.set(entry.id, times)
    return times === 1 ? entry : { ...entry, id: `${entry.id}-${times}` }
  })
}

const tablesOf = (context: ComposeContext): readonly ScheduleTable[] =>
  itemsOf(context.library.schedules).flatMap((plan) => plan.tables)

/** What is due: in the few words of the calendar, or with the head of its date, "Order by". */
const titleOf = (
  { short, cells }: ScheduleRow,
  { heads }: ScheduleTable,
  { library }: ComposeContext,
): string =>
  short === undefined
    ? fill(library.words.calendar.deadline, { head: heads[0] ?? '', what: cells[0] ?? '' })
    : short.charAt(0).toUpperCase() + short.slice(1)

/** Rows of plans that have a date. */
const taskEntries = (table: ScheduleTable, context: ComposeContext): readonly CalendarEntry[] =>
  datedRows(table.rows ?? [], context).flatMap(({ row, date }) =>
    date === undefined
      ? []
      : [
          {
            id: `${table.id}-${keyOf(row)}`,
            title: titleOf(row, table, context),
            notes: row.cells.flatMap((cell, i) =>
              i === 0 && row.short === undefined ? [] : `${table.heads[i + 1] ?? ''}: ${cell}`,
            ),
            time: { kind: 'day' as const, date },
          },
        ],
  )

type Shift = NonNullable<ScheduleRow['shift']>

/** Seconds from the start of the race day; undefined where one of both is not known. */
function shiftHours(shift: Shift, context: ComposeContext) {
  const next = 'next-day' in shift
  const from = namedNumber(next ? shift['next-day'] : shift.from, context)
  const to = namedNumber(next ? shift.lasts : shift.to, context)
  if (from === undefined || to === undefined) return undefined
  return next ? { from: secondsPerDay + from, to: secondsPerDay + from + to } : { from, to }
}

/** Who works from when to when, on every race day by its own clock. */
function shiftEntries(
  roles: readonly string[],
  days: readonly Day[],
  context: ComposeContext,
): CalendarEntry[] {
  const zone = context.facility.file.place['time-zone']
  const rows = tablesOf(context)
    .flatMap((table) => table.rows ?? [])
    .filter((row) => row.shift && roles.includes(row.shift.role))
  return days.flatMap(({ day, context: own }) =>
    datedRows(rows, own).flatMap(({ row }) => {
      const hours = row.shift && shiftHours(row.shift, own)
      return !row.shift || !hours
        ? []
        : {
            id: `${row.shift.role}-${day.date}`,
            title: filled(row.cells[0] ?? '', own),
            notes: [],
            time: hoursOf(day.date, hours.from, hours.to, zone),
          }
    }),
  )
}

/** Race days, from the first race until the track is clear behind the last. */
const raceEntries = (days: readonly Day[], context: ComposeContext): readonly CalendarEntry[] =>
  days.map(({ day, context: own }) => {
    const clear = namedNumber('clock.after', own)
    const title = fill(context.library.words.calendar.raceDay, { races: day.races })
    const id = `race-day-${day.date}`
    return {
      id,
      title,
      notes: [],
      time:
        clear === undefined
          ? { kind: 'day', date: day.date }
          : hoursOf(day.date, day['first-post'], clear, context.facility.file.place['time-zone']),
    }
  })

/** Everything that one reader is to know of, in no order. */
export const entriesOf = (
  { tables = [], shifts = [] }: Calendar,
  days: readonly Day[],
  context: ComposeContext,
): readonly CalendarEntry[] =>
  numbered([
    ...raceEntries(days, context),
    ...tablesOf(context)
      .filter((table) => tables.includes(table.id))
      .flatMap((table) => taskEntries(table, context)),
    ...shiftEntries(shifts, days, context),
  ])

import { addDays, isClose, secondsPerDay, workingDaysOff } from '../../model/day.ts'
import type { Belongs, ScheduleRow } from '../../validate/schemas/plans.ts'
import { applies } from '../applies.ts'
import { type ComposeContext, filled, isKnown, namedNumber } from '../context.ts'
import { raceWeek } from '../dates.ts'
import { dayOfFinding } from '../findings.ts'

/** Days that facts come to when they are added up. */
export const daysOf = (names: readonly string[], context: ComposeContext): number =>
  names.reduce((total, name) => total + (namedNumber(name, context) ?? 0), 0) / secondsPerDay

/**
 * The race day whose numbers an item is about, where it is there because of a finding that does not
 * hold on the fullest one.
 */
const dayOf = ({ finding }: Belongs, context: ComposeContext): ComposeContext | undefined =>
  finding === undefined || context.found ? undefined : dayOfFinding(finding, context)

/** Whether a row or a job of a plan belongs in the manual of this facility, or on the day of the context. */
export function isKept(item: Belongs, context: ComposeContext): boolean {
  const found = (id: string): boolean =>
    context.found?.has(id) ?? context.parts.findings.some((f) => f.id === id)
  const day = dayOf(item, context) ?? context
  return (
    applies(item.when, context.here) &&
    (item.needs ?? []).every((name) => isKnown(name, day)) &&
    !(item.lacks ?? []).some((name) => isKnown(name, day)) &&
    (item.finding?.some(found) ?? true) &&
    !(item['no-finding']?.some(found) ?? false)
  )
}

/**
 * The date that a row begins with; undefined for rows without one, and where there are no race
 * days.
 */
function dateOf(row: ScheduleRow, context: ComposeContext): string | undefined {
  const week = raceWeek(context.facility.file)
  if (!week) return undefined
  if (row.on) {
    const day = addDays(week.first, -daysOf(row.on, context))
    return row.notice === undefined ? day : workingDaysOff(day, -daysOf([row.notice], context))
  }
  return row.after && addDays(week.last, daysOf(row.after, context))
}

/** Whether the first race is so close that the plan for the last days goes first. */
export const raceIsClose = ({
  facility,
  date,
}: Pick<ComposeContext, 'facility' | 'date'>): boolean =>
  isClose(raceWeek(facility.file)?.first, date)

/** A row with the numbers of the day that it is about, where that is not the fullest one. */
function ofItsDay(row: ScheduleRow, context: ComposeContext): ScheduleRow {
  const day = dayOf(row, context)
  return day ? { ...row, cells: row.cells.map((cell) => filled(cell, day)) } : row
}

/** Rows that apply here, those with a date (`YYYY-MM-DD`) in its order behind those without. */
export const datedRows = (
  rows: readonly ScheduleRow[],
  context: ComposeContext,
): readonly { readonly row: ScheduleRow; readonly date: string | undefined }[] =>
  rows
    .filter((row) => isKept(row, context) && !(row.long && raceIsClose(context)))
    .map((row) => ({ row: ofItsDay(row, context), date: dateOf(row, context) }))
    .sort((a, b) => (a.date ?? '').localeCompare(b.date ?? ''))

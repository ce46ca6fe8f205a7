import type { Engine } from '../../compute/engine/engine.ts'
import { addDays, secondsPerDay } from '../../model/day.ts'
import type { PlanRow } from '../../validate/schemas/plans.ts'
import { applies } from '../applies.ts'
import { raceWeek } from './dates.ts'
import { numberOf, type PlanContext } from './plan-context.ts'

const sum = (names: readonly string[], engine: Engine): number =>
  names.reduce((total, name) => total + (numberOf(engine, name) ?? 0), 0)

const isKept = (row: PlanRow, engine: Engine, { here }: PlanContext): boolean =>
  applies(row.when, here) &&
  (row.needs ?? []).every((name) => numberOf(engine, name) !== undefined) &&
  !(row.lacks ?? []).some((name) => numberOf(engine, name) !== undefined)

/**
 * The date that a row begins with; undefined for rows without one, and where there are no race
 * days.
 */
function dateOf(row: PlanRow, engine: Engine, { facility }: PlanContext): string | undefined {
  const week = raceWeek(facility.file)
  if (!week) return undefined
  if (row.on) return addDays(week.first, -sum(row.on, engine) / secondsPerDay)
  return row.after ? addDays(week.last, sum(row.after, engine) / secondsPerDay) : undefined
}

/** Rows that apply here, those with a date (`YYYY-MM-DD`) in its order behind those without. */
export const datedRows = (
  rows: readonly PlanRow[],
  engine: Engine,
  context: PlanContext,
): readonly { readonly row: PlanRow; readonly date: string | undefined }[] =>
  rows
    .filter((row) => isKept(row, engine, context))
    .map((row) => ({ row, date: dateOf(row, engine, context) }))
    .sort((a, b) => (a.date ?? '').localeCompare(b.date ?? ''))

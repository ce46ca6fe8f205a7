import type { Engine } from '../../compute/engine/engine.ts'
import type { ManualPlan, ManualTable } from '../../model/manual.ts'
import { placeholder } from '../../model/placeholders.ts'
import type { PlanRow, PlanTable } from '../../validate/schemas/plans.ts'
import { applies } from '../applies.ts'
import { datedRows } from './dated-rows.ts'
import { shortDate } from './dates.ts'
import { materialClassRows, sievePointRows } from './material-rows.ts'
import { numberOf, type PlanContext, textOf } from './plan-context.ts'
import { raceDayHourRows } from './race-day-hours.ts'
import { raceDayGroups } from './race-days.ts'
import {
  levelStationRows,
  surveyDayRows,
  surveyMoveRows,
  surveyStationRows,
} from './survey-rows.ts'
import { eveningRows, halfDayRows, signOffRows } from './training-rows.ts'
import { weatherRows } from './weather-rows.ts'

function writtenRows(
  rows: readonly PlanRow[],
  engine: Engine,
  context: PlanContext,
): readonly (readonly string[])[] {
  return datedRows(rows, engine, context).map(({ row, date }) =>
    date === undefined
      ? row.cells
      : [shortDate(date, context.computed.locale.system), ...row.cells],
  )
}

/** A text with another day's numbers in place of names. */
const filled = (text: string, engine: Engine): string =>
  text.replace(placeholder, (_, name: string) => textOf(engine, name) ?? '–')

/** Tables that are repeated for each race day, with its dates in the title. */
function byRaceDay(
  table: PlanTable,
  context: PlanContext,
  rowsOf: (engine: Engine) => readonly (readonly string[])[],
): ManualTable[] {
  return raceDayGroups(context).map(({ dates, engine }, i) => ({
    id: `${table.id}-${i + 1}`,
    title: `${table.title}: ${dates}`,
    about: i === 0 ? table.about : undefined,
    heads: table.heads,
    rows: rowsOf(engine).map((cells) => cells.map((c) => filled(c, engine))),
  }))
}

/** What the modules are called, from the table that lists them. */
const moduleTitles = ({ plans }: PlanContext): readonly string[] =>
  plans
    .flatMap((p) => p.tables)
    .find((t) => t.id === 'modules')
    ?.rows?.map((r) => r.cells[0] ?? '') ?? []

function composeTable(table: PlanTable, context: PlanContext): ManualTable[] {
  const { engine } = context.computed
  const plain = (rows: readonly (readonly string[])[]): ManualTable[] => [
    { id: table.id, title: table.title, about: table.about, heads: table.heads, rows },
  ]
  switch (table.from) {
    case 'race-day-hours':
      return byRaceDay(table, context, (varied) => raceDayHourRows(varied, context))
    case 'survey-days':
      return plain(surveyDayRows(context))
    case 'survey-stations':
      return plain(surveyStationRows(context))
    case 'survey-moves':
      return plain(surveyMoveRows(context))
    case 'weather-days':
      return plain(weatherRows(context))
    case 'training-half-day':
      return plain(halfDayRows(context, moduleTitles(context)))
    case 'training-evenings':
      return plain(eveningRows(context, moduleTitles(context)))
    case 'sign-off':
      return plain(signOffRows(context))
    case 'symptom-chart':
      return plain(context.symptomRows)
    case 'sieve-points':
      return plain(sievePointRows(context))
    case 'material-class':
      return plain(materialClassRows(context))
    case 'level-stations':
      return plain(levelStationRows(context))
    case undefined:
      return table['each-race-day']
        ? byRaceDay(table, context, (varied) => writtenRows(table.rows ?? [], varied, context))
        : plain(writtenRows(table.rows ?? [], engine, context))
  }
}

/** The plans that this facility's facts allow, with their tables. */
export function composePlans(context: PlanContext): readonly ManualPlan[] {
  const { engine } = context.computed
  return context.plans
    .filter(
      (plan) =>
        applies(plan.when, context.here) &&
        (plan.needs ?? []).every((name) => numberOf(engine, name) !== undefined),
    )
    .map((plan) => ({
      id: plan.id,
      title: plan.title,
      about: plan.about,
      drawings: plan.drawings ?? [],
      tables: plan.tables.flatMap((t) => composeTable(t, context)).filter((t) => t.rows.length > 0),
    }))
    .filter((plan) => plan.tables.length > 0)
}

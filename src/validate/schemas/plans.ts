import * as z from 'zod'
import { figureName, id, line, prose } from './text.ts'
import { when } from './when.ts'

/** Rows that are worked out from surveys and race days; all other rows are written by authors. */
const rowSources = [
  'survey-days',
  'survey-stations',
  'survey-moves',
  'level-stations',
  'race-day-hours',
  'weather-days',
  'sieve-points',
  'material-class',
  'training-half-day',
  'training-evenings',
  'sign-off',
  'symptom-chart',
] as const
export type RowSource = (typeof rowSources)[number]

const row = z.strictObject({
  cells: z.array(line).min(1),
  /**
   * The same in a few words, for a calendar: rows of the countdown without it stand in the table
   * alone.
   */
  short: line.max(40).optional(),
  /**
   * Days before the first race day, as facts that are added up: the row then begins with the date
   * and rows are sorted by it.
   */
  on: z.array(figureName).min(1).optional(),
  /** Days after the last race day instead. */
  after: z.array(figureName).min(1).optional(),
  /** Figures and facts without which the row says nothing here. */
  needs: z.array(figureName).optional(),
  /** Figures that, where they have a value, make this row superfluous. */
  lacks: z.array(figureName).optional(),
  when: when.optional(),
})

const table = z.strictObject({
  id,
  title: line,
  about: line.optional(),
  heads: z.array(line).min(2),
  rows: z.array(row).min(1).optional(),
  from: z.enum(rowSources).optional(),
  /** Repeated for each race day that differs from the others, with that day's numbers. */
  'each-race-day': z.literal(true).optional(),
})

/**
 * A schedule on pages of its own: a plan of work, a survey or a record, with text, perhaps drawings,
 * and tables.
 */
const schedule = z.strictObject({
  id,
  title: line,
  about: prose,
  /** Figures and facts without which the schedule says nothing here. */
  needs: z.array(figureName).optional(),
  when: when.optional(),
  drawings: z.array(id).min(1).optional(),
  tables: z.array(table).min(1),
})

/** The file `content/plans.yaml`. */
export const plans = z.strictObject({ plans: z.array(schedule).min(1) })

export type Schedule = z.infer<typeof schedule>
export type ScheduleTable = z.infer<typeof table>
export type ScheduleRow = z.infer<typeof row>

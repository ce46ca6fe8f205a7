import * as z from 'zod'
import { capabilities } from '../../model/capability.ts'
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
  'season-weeks',
  'season-days',
  'sieve-points',
  'material-class',
  'training-half-day',
  'training-evenings',
  'training-by-role',
  'sign-off',
  'symptom-chart',
  'work-daily',
  'work-days',
  'work-left',
] as const
export type RowSource = (typeof rowSources)[number]

/** Where a row or a job belongs, beside `when`. */
const belongs = {
  /** Figures and facts without which it says nothing here. */
  needs: z.array(figureName).optional(),
  /** Figures that, where they have a value, make it superfluous. */
  lacks: z.array(figureName).optional(),
  /** It belongs where any of these findings holds. */
  finding: z.array(id).min(1).optional(),
  /** It belongs where none of these findings holds. */
  'no-finding': z.array(id).min(1).optional(),
  when: when.optional(),
}

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
  /**
   * Working days further back, which must lie whole between the row's date and the day counted by
   * `on`: notice that runs only on working days.
   */
  notice: figureName.optional(),
  /** Days after the last race day instead. */
  after: z.array(figureName).min(1).optional(),
  /** The plan for the last days covers it: left out where the first race is close. */
  long: z.literal(true).optional(),
  /** Who works from when to when, for calendars; or from a time of the next day, and how long. */
  shift: z
    .union([
      z.strictObject({ role: id, from: figureName, to: figureName }),
      z.strictObject({ role: id, 'next-day': figureName, lasts: figureName }),
    ])
    .optional(),
  ...belongs,
})

/** Work that is laid into days by its hours; see `src/compute/people/work-days.ts`. */
const job = z.strictObject({
  does: line,
  /** How many work on it at once. */
  people: z.int().min(1),
  /** What it takes each of them: figures and facts that are added up. */
  takes: z.array(figureName).min(1),
  /** The first day on which it can be done; the first of all where nothing is said. */
  from: z.int().min(1).optional(),
  /** The last day on which it may still be done. */
  to: z.int().min(1).optional(),
  daily: z.literal(true).optional(),
  /** Working days that must lie whole between the first day of all and this work. */
  notice: figureName.optional(),
  /** Only on days on which the machine that does this is here. */
  machine: z.enum(capabilities).optional(),
  /** In a few words, for what is due where the first race is close. */
  short: line.max(40).optional(),
  /** Who does it, by the name under `people`; whoever has the most time where nothing is said. */
  by: line.optional(),
  /** May be stopped in the evening and taken up again. */
  split: z.literal(true).optional(),
  ...belongs,
})

/** Days of a small crew, filled with jobs in their order. */
const work = z.strictObject({
  /** The fact that says how many days there are, up to the first race day. */
  days: figureName,
  /** The fact that says how long each of them works in a day. */
  shift: figureName,
  /** What each person is called, and all of them together. */
  people: z.array(line).min(2),
  /** The fact that says how many of them there are; at least two are planned with. */
  crew: figureName,
  all: line,
  /** The same where there are more than two. */
  'all-more': line,
  /** What a day says that has no work but the daily one. */
  daily: line,
  jobs: z.array(job).min(1),
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
const shape = z.strictObject({
  id,
  /** Printed with the findings, on one page for the board, and not among the plans. */
  for: z.literal('board').optional(),
  title: line,
  about: prose,
  /** What is said instead where the first race is close. */
  'about-close': prose.optional(),
  /** Figures and facts without which the schedule says nothing here. */
  needs: z.array(figureName).optional(),
  when: when.optional(),
  drawings: z.array(id).min(1).optional(),
  /** What tables with rows from `work-daily`, `work-days` and `work-left` are made of. */
  work: work.optional(),
  tables: z.array(table).min(1),
})

/** The page of the findings has no place for drawings. */
const schedule = shape.refine((s) => s.for === undefined || s.drawings === undefined, {
  error: 'a plan for the board shows no drawings',
  path: ['drawings'],
})

/** The file `content/plans.yaml`. */
export const plans = z.strictObject({ plans: z.array(schedule).min(1) })

export type Schedule = z.infer<typeof schedule>
export type ScheduleTable = z.infer<typeof table>
export type Belongs = Pick<ScheduleRow, keyof typeof belongs>
export type Work = z.infer<typeof work>
export type WorkJob = z.infer<typeof job>
export type ScheduleRow = z.infer<typeof row>

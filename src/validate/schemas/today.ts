import * as z from 'zod'
import { figureName, id, line } from './text.ts'
import { when } from './when.ts'

/** A number of the unit in which a quantity is printed, for both systems or for each its own. */
const step = z.union([
  z.number().positive(),
  z.strictObject({ us: z.number().positive(), metric: z.number().positive() }),
])

/** A fact that changes from day to day; it is offered where some number rests on it. */
const dayFact = z.strictObject({
  fact: figureName,
  /** What it is called on the day, where the fact itself speaks of a month or an example. */
  label: line,
  /** How much one touch of more or less changes it. */
  step,
})

/** A time counted from one that is entered, by a figure or fact that is a duration. */
const clockRow = z.strictObject({
  figure: figureName,
  /** Counted back from the time, not on. */
  before: z.literal(true).optional(),
  says: line,
  needs: z.array(figureName).optional(),
  lacks: z.array(figureName).optional(),
  when: when.optional(),
})

/** The file `content/today.yaml`: what a phone works out anew for a day. */
export const today = z.strictObject({
  groups: z.array(z.strictObject({ id, title: line, facts: z.array(dayFact).min(1) })).min(1),
  /** Questions of a day, each with the figures that answer it. */
  results: z.array(z.strictObject({ title: line, figures: z.array(figureName).min(1) })).min(1),
  clocks: z
    .array(
      z.strictObject({
        id,
        title: line,
        /** What the time is that somebody enters. */
        at: line,
        about: line,
        /** It may be right now, so that a touch puts it in. */
        now: z.literal(true).optional(),
        rows: z.array(clockRow).min(1),
      }),
    )
    .min(1),
  /** The table of a plan that is shown as a list for the day, by its times. */
  list: z.strictObject({ plan: id, table: id, title: line }),
})

export type TodayFile = z.infer<typeof today>

import { numberOf, type PlanContext, printed } from './plan-context.ts'

type Rows = readonly (readonly string[])[]

/** Modules one after another from an hour on, each as long as the figure says. */
function timed(context: PlanContext, from: string, titles: readonly string[]): Rows {
  const start = numberOf(context.computed.engine, from)
  const long = numberOf(context.computed.engine, 'lesson.module')
  if (start === undefined || long === undefined) return []
  return titles.map((title, i) => [
    printed(start + i * long, 'clock', context),
    printed(start + (i + 1) * long, 'clock', context),
    title,
  ])
}

/** All modules in one morning. */
export const halfDayRows = (context: PlanContext, titles: readonly string[]): Rows =>
  timed(context, 'practice.training-start', titles)

/** Half of the modules on each of two evenings. */
export function eveningRows(context: PlanContext, titles: readonly string[]): Rows {
  const half = Math.ceil(titles.length / 2)
  return [titles.slice(0, half), titles.slice(half)].flatMap((part, i) =>
    timed(context, 'practice.training-evening', part).map((row) => [String(i + 1), ...row]),
  )
}

/** A line for each volunteer, and two to spare. */
export const signOffRows = (context: PlanContext): Rows =>
  Array.from(
    { length: Math.round(numberOf(context.computed.engine, 'crew.race-day') ?? 0) + 2 },
    () => [''],
  )

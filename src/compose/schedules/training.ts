import type { TableRows } from '../../model/manual/schedule.ts'
import { type ComposeContext, itemsOf, printed } from '../context.ts'

/** What the modules are called, from the table that lists them. */
const moduleTitles = ({ library }: ComposeContext): readonly string[] =>
  itemsOf(library.schedules)
    .flatMap((s) => s.tables)
    .find((t) => t.id === 'modules')
    ?.rows?.map((r) => r.cells[0] ?? '') ?? []

/** Modules one after another from an hour on, each as long as the figure says. */
function timed(
  context: ComposeContext,
  from: 'practice.training-start' | 'practice.training-evening',
  titles: readonly string[],
): TableRows {
  const times = context.engine.siOfAll({ start: from, long: 'lesson.module' })
  if (!times) return []
  return titles.map((title, i) => [
    printed(times.start + i * times.long, 'clock', context),
    printed(times.start + (i + 1) * times.long, 'clock', context),
    title,
  ])
}

/** All modules in one morning. */
export const halfDayRows = (context: ComposeContext): TableRows =>
  timed(context, 'practice.training-start', moduleTitles(context))

/** Half of the modules on each of two evenings. */
export function eveningRows(context: ComposeContext): TableRows {
  const titles = moduleTitles(context)
  const half = Math.ceil(titles.length / 2)
  return [titles.slice(0, half), titles.slice(half)].flatMap((part, i) =>
    timed(context, 'practice.training-evening', part).map((row) => [String(i + 1), ...row]),
  )
}

/** A line for each volunteer, and two to spare. */
export const signOffRows = ({ engine }: ComposeContext): TableRows =>
  Array.from({ length: Math.round(engine.si('crew.race-day') ?? 0) + 2 }, () => [''])

import type { Due } from '../model/manual/due.ts'
import { fill } from '../model/pattern.ts'
import { tasksOf } from './charts/countdown.ts'
import type { ComposeContext } from './context.ts'
import { shortDate } from './dates.ts'

/** What is due on which day, in the few words of the calendar; race days behind other things. */
export function composeDue(context: ComposeContext): readonly Due[] {
  const { library, parts } = context
  const tasks = tasksOf(context).map((t) => ({ ...t, isRaceDay: false }))
  const races = parts.raceDays.map(({ date, firstPost, races }) => ({
    date,
    task: fill(library.words.site.dueRaces, { races, time: firstPost }),
    isRaceDay: true,
  }))
  return [...tasks, ...races]
    .sort((a, b) => a.date.localeCompare(b.date))
    .map((due) => ({ ...due, label: shortDate(due.date, context) }))
}

import { isClose } from '../../../model/day.ts'
import { fill } from '../../../model/pattern.ts'
import type { SiteContext } from '../page.ts'

/** So many are shown at once. */
const shownAtOnce = 3

/**
 * What is due. All of it stands on the page; without a script those are shown that come next from
 * the day of the manual on, with one from today on.
 */
export function dueView({ manual, words }: SiteContext) {
  const next = manual.due.filter((d) => d.date >= manual.date).slice(0, shownAtOnce)
  const [first] = next
  if (!first) return undefined
  const race = manual.raceDays.map((d) => d.date).sort()[0]
  const close = isClose(race, manual.date)
  return {
    // Where the plan of all tasks is.
    plan: manual.schedules.find((s) => s.id === (close ? 'ten-days' : 'countdown'))?.id,
    shown: shownAtOnce,
    from: fill(words.site.dueFrom, { date: manual.date }),
    list: manual.due.map((d) => ({ ...d, later: !next.includes(d) })),
  }
}

import { startOf } from '../../model/day.ts'
import type { ManualCalendar } from '../../model/manual/calendar.ts'
import { type ComposeContext, itemsOf } from '../context.ts'
import { eachRaceDay } from '../schedules/race-day-groups.ts'
import { entriesOf } from './entries.ts'
import { endOf } from './hours.ts'

/**
 * What each reader takes into a calendar. Days that were over when the manual was made are left
 * out, and so are readers for whom nothing is left.
 */
export function composeCalendars(context: ComposeContext): readonly ManualCalendar[] {
  const days = eachRaceDay(context)
  return itemsOf(context.library.calendars)
    .map((calendar) => ({
      id: calendar.id,
      title: calendar.title,
      about: calendar.about,
      entries: entriesOf(calendar, days, context)
        .filter(({ time }) => endOf(time) > startOf(context.date).getTime())
        .toSorted((a, b) => endOf(a.time) - endOf(b.time)),
    }))
    .filter(({ entries }) => entries.length > 0)
}

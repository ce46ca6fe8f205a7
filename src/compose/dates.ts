import { dayOfMonth, monthOf, weekdayOf } from '../model/day.ts'
import type { UnitSystem } from '../model/quantity/kinds.ts'
import type { FacilityFile } from '../validate/schemas/facility.ts'

const weekdays = ['Sun', 'Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat']
const months = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec']

/**
 * "Tue, Aug 3" or "Tue 3 Aug", from `YYYY-MM-DD`; written here because the system's own format
 * changes with its version.
 */
export function shortDate(date: string, system: UnitSystem): string {
  const weekday = weekdays[weekdayOf(date)]
  const month = months[monthOf(date) - 1]
  const number = dayOfMonth(date)
  return system === 'us' ? `${weekday}, ${month} ${number}` : `${weekday} ${number} ${month}`
}

/** "Tue, Aug 3, 2027" or "Tue 3 Aug, 2027". */
export const dateWithYear = (date: string, system: UnitSystem): string =>
  `${shortDate(date, system)}, ${date.slice(0, 4)}`

/** "Aug 3" or "3 Aug". */
export const dayAndMonth = (date: string, system: UnitSystem): string =>
  shortDate(date, system).replace(/^\w+,? /, '')

/** On which day a week begins: Sunday in the United States, Monday elsewhere (ISO 8601). */
const weekBegins = (system: UnitSystem): number => (system === 'us' ? 0 : 1)

/** Place of a date in its week, from 0. */
export const placeInWeek = (date: string, system: UnitSystem): number =>
  (weekdayOf(date) + 7 - weekBegins(system)) % 7

/** Heads of a calendar. */
export const weekdaysOf = (system: UnitSystem): readonly string[] =>
  weekdays.map((_, i) => weekdays[(i + weekBegins(system)) % 7] ?? '')

/** First and last race day; undefined when none is given. */
export function raceWeek(
  file: FacilityFile,
): { readonly first: string; readonly last: string } | undefined {
  const dates = (file['race-days'] ?? []).map((d) => d.date).sort()
  const [first, last] = [dates[0], dates.at(-1)]
  return first === undefined || last === undefined ? undefined : { first, last }
}

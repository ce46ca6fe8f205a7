import type { UnitSystem } from '../../model/quantity/kinds.ts'
import type { FacilityFile } from '../../validate/schemas/facility.ts'

const day = 86_400_000

const weekdays = ['Sun', 'Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat']
const months = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec']

/**
 * "Tue, Aug 3" or "Tue 3 Aug", from `YYYY-MM-DD`; written here because the system's own format
 * changes with its version.
 */
export function shortDate(date: string, system: UnitSystem): string {
  const at = new Date(`${date}T00:00:00Z`)
  const [weekday, month, number] = [
    weekdays[at.getUTCDay()],
    months[at.getUTCMonth()],
    at.getUTCDate(),
  ]
  return system === 'us' ? `${weekday}, ${month} ${number}` : `${weekday} ${number} ${month}`
}

/** "Aug 3" or "3 Aug". */
export const dayOfMonth = (date: string, system: UnitSystem): string =>
  shortDate(date, system).replace(/^\w+,? /, '')

/** On which day a week begins: Sunday in the United States, Monday elsewhere (ISO 8601). */
const weekBegins = (system: UnitSystem): number => (system === 'us' ? 0 : 1)

/** Place of a date in its week, from 0. */
export const weekdayOf = (date: string, system: UnitSystem): number =>
  (new Date(`${date}T00:00:00Z`).getUTCDay() + 7 - weekBegins(system)) % 7

/** Heads of a calendar. */
export const weekdaysOf = (system: UnitSystem): readonly string[] =>
  weekdays.map((_, i) => weekdays[(i + weekBegins(system)) % 7] ?? '')

/** The date a number of days from another; before it when negative. */
export const daysFrom = (date: string, days: number): string =>
  new Date(Date.parse(`${date}T00:00:00Z`) + Math.round(days) * day).toISOString().slice(0, 10)

/** First and last race day; undefined when none is given. */
export function raceWeek(
  file: FacilityFile,
): { readonly first: string; readonly last: string } | undefined {
  const dates = (file['race-days'] ?? []).map((d) => d.date).sort()
  const [first, last] = [dates[0], dates.at(-1)]
  return first === undefined || last === undefined ? undefined : { first, last }
}

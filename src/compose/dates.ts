import { dayOfMonth, monthOf, weekdayOf } from '../model/day.ts'
import { fill } from '../model/pattern.ts'
import type { UnitSystem } from '../model/quantity/kinds.ts'
import type { FacilityFile } from '../validate/schemas/facility.ts'
import { months, weekdays } from '../validate/schemas/words/calendar.ts'
import type { ComposeContext } from './context.ts'

/** What dates are written with. */
export type Dating = Pick<ComposeContext, 'locale' | 'library'>

/** "August", or "Aug". @param month 1 to 12. */
export function monthName(
  month: number,
  { library }: Pick<Dating, 'library'>,
  width: 'months' | 'shortMonths' = 'months',
): string {
  const name = months[month - 1]
  if (!name) throw new RangeError(`no month ${month}`)
  return library.words.calendar[width][name]
}

/** "Tue, Aug 3" or "Tue 3 Aug", from `YYYY-MM-DD`. */
export function shortDate(date: string, dating: Dating): string {
  const weekday = weekdays[weekdayOf(date)]
  if (!weekday) throw new RangeError(`no day ${date}`)
  const comma = dating.locale.system === 'us' ? ',' : ''
  return `${dating.library.words.calendar.weekdays[weekday]}${comma} ${dayAndMonth(date, dating)}`
}

/** "Tue, Aug 3, 2027" or "Tue 3 Aug, 2027". */
export const dateWithYear = (date: string, dating: Dating): string =>
  `${shortDate(date, dating)}, ${date.slice(0, 4)}`

/** Whether a day was over when the manual was made. */
export const isPast = (date: string, { date: made }: Pick<ComposeContext, 'date'>): boolean =>
  date < made

/** A day by which something is due; where it is past it says so. */
export function dueDate(date: string, context: Dating & Pick<ComposeContext, 'date'>): string {
  const written = shortDate(date, context)
  return isPast(date, context) ? fill(context.library.words.plans.past, { date: written }) : written
}

/** "Aug 3" or "3 Aug". */
export function dayAndMonth(date: string, dating: Dating): string {
  const month = monthName(monthOf(date), dating, 'shortMonths')
  return dating.locale.system === 'us'
    ? `${month} ${dayOfMonth(date)}`
    : `${dayOfMonth(date)} ${month}`
}

/** On which day a week begins: Sunday in the United States, Monday elsewhere (ISO 8601). */
const weekBegins = (system: UnitSystem): number => (system === 'us' ? 0 : 1)

/** Place of a date in its week, from 0. */
export const placeInWeek = (date: string, system: UnitSystem): number =>
  (weekdayOf(date) + 7 - weekBegins(system)) % 7

/** Heads of a calendar. */
export function weekdaysOf({ locale, library }: Dating): readonly string[] {
  const first = weekBegins(locale.system)
  return [...weekdays.slice(first), ...weekdays.slice(0, first)].map(
    (name) => library.words.calendar.weekdays[name],
  )
}

/** First and last race day; undefined when none is given. */
export function raceWeek(
  file: FacilityFile,
): { readonly first: string; readonly last: string } | undefined {
  const dates = (file['race-days'] ?? []).map((d) => d.date).sort()
  const [first, last] = [dates[0], dates.at(-1)]
  return first === undefined || last === undefined ? undefined : { first, last }
}

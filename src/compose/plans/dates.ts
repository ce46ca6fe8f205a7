import type { UnitSystem } from '../../model/quantity/kinds.ts'
import type { FacilityFile } from '../../validate/schemas/facility.ts'

const day = 86_400_000

/** "Tue, Aug 3" or "Tue 3 Aug", from `YYYY-MM-DD`. */
export const shortDate = (date: string, system: UnitSystem): string =>
  new Intl.DateTimeFormat(system === 'us' ? 'en-US' : 'en-GB', { weekday: 'short', month: 'short', day: 'numeric', timeZone: 'UTC' }).format(new Date(`${date}T00:00:00Z`))

/** The date a number of days from another; before it when negative. */
export const daysFrom = (date: string, days: number): string => new Date(Date.parse(`${date}T00:00:00Z`) + Math.round(days) * day).toISOString().slice(0, 10)

/** First and last race day; undefined when none is given. */
export function raceWeek(file: FacilityFile): { readonly first: string; readonly last: string } | undefined {
  const dates = (file['race-days'] ?? []).map((d) => d.date).sort()
  const [first, last] = [dates[0], dates.at(-1)]
  return first === undefined || last === undefined ? undefined : { first, last }
}

import type { Quantity } from '../../model/quantity/parse-quantity.ts'
import type { FacilityFile } from '../../validate/schemas/facility.ts'

type RaceDayEntry = NonNullable<FacilityFile['race-days']>[number]

/** Days from 1 January of the same year, which is day 1. */
export const dayOfYear = (date: string): number =>
  Math.round(
    (Date.parse(`${date}T00:00:00Z`) - Date.parse(`${date.slice(0, 4)}-01-01T00:00:00Z`)) /
      86_400_000,
  ) + 1

/** Days from 1 January 1970. */
export const dayNumber = (date: string): number => Date.parse(`${date}T00:00:00Z`) / 86_400_000

/** Seconds after midnight of a time such as 13:30. */
export const secondsOf = (clock: string): number => {
  const [hours = 0, minutes = 0] = clock.split(':').map(Number)
  return hours * 3600 + minutes * 60
}

/**
 * Seconds by which the clock of a zone is ahead of Universal Time at noon of a day; daylight saving
 * is in the zone's own rules.
 */
export function zoneOffset(date: string, timeZone: string): number | undefined {
  const noon = new Date(`${date}T12:00:00Z`)
  const name =
    new Intl.DateTimeFormat('en-US', { timeZone, timeZoneName: 'longOffset' })
      .formatToParts(noon)
      .find((p) => p.type === 'timeZoneName')?.value ?? ''
  const m = /^GMT(?:([+-])(\d\d):(\d\d))?$/.exec(name)
  return m
    ? (m[1] === '-' ? -1 : 1) * (Number(m[2] ?? 0) * 3600 + Number(m[3] ?? 0) * 60)
    : undefined
}

/**
 * Facts that belong to one race day, in SI, by their path; an interval that the program does not
 * give stays as it is elsewhere.
 */
export function raceDayValues(
  day: RaceDayEntry,
  timeZone: string | undefined,
): ReadonlyMap<string, number> {
  const zone = timeZone === undefined ? undefined : zoneOffset(day.date, timeZone)
  const interval = (day.interval as Quantity | undefined)?.si
  return new Map([
    ['fair.day-of-year', dayOfYear(day.date)],
    ['fair.day-number', dayNumber(day.date)],
    ['race-days.races', day.races],
    ['race-days.first-post', secondsOf(day['first-post'])],
    ...(zone === undefined ? [] : [['fair.zone', zone] as const]),
    ...(interval === undefined ? [] : [['race-days.interval', interval] as const]),
  ])
}

import { millisecondsPerDay, startOf, zoneOffset } from '../../model/day.ts'
import type { CalendarTime } from '../../model/manual/calendar.ts'

const moment = (milliseconds: number): string =>
  new Date(milliseconds).toISOString().replace(/\.\d{3}Z$/, '')

/**
 * Hours of a day as moments, so that every calendar shows them right wherever it is.
 * @param from Seconds from the start of the day by the clock of the place; an end after midnight is
 *   more than a day. Clocks are taken as they go at noon of that day.
 * @param zone Name of the zone (IANA); where nobody has said it, the hours are without zone.
 */
export function hoursOf(
  date: string,
  from: number,
  to: number,
  zone: string | undefined,
): CalendarTime {
  const ahead = zone === undefined ? undefined : zoneOffset(date, zone)
  const written = (seconds: number): string =>
    `${moment(startOf(date).getTime() + 1000 * (Math.round(seconds) - (ahead ?? 0)))}${ahead === undefined ? '' : 'Z'}`
  return { kind: 'hours', from: written(from), to: written(to) }
}

/** The moment at which something is over, for comparing and sorting; a whole day ends with it. */
export const endOf = (time: CalendarTime): number =>
  time.kind === 'day'
    ? startOf(time.date).getTime() + millisecondsPerDay
    : new Date(time.to.endsWith('Z') ? time.to : `${time.to}Z`).getTime()

/**
 * Days and clocks. A date is written `YYYY-MM-DD` and taken as the day of Universal Time that has
 * that name, so that counting days never meets a change of the clock.
 */

export const secondsPerDay = 86_400
export const millisecondsPerDay = 1000 * secondsPerDay

/** The moment at which a day begins. */
export const startOf = (date: string): Date => new Date(`${date}T00:00:00Z`)

/** The day of a moment. @param moment Milliseconds from the start of 1970. */
export const dayAt = (moment: number): string => new Date(moment).toISOString().slice(0, 10)

/**
 * Whether a text names a day that exists, of the years 1900 to 2199: 2027-02-31 would be read as a
 * day in March, and days near the ends of all years have none before or behind them.
 */
export const isDay = (text: string): boolean =>
  /^(?:19|2[01])\d{2}-\d{2}-\d{2}$/.test(text) &&
  !Number.isNaN(startOf(text).getTime()) &&
  dayAt(startOf(text).getTime()) === text

/** Days from 1 January 1970. */
export const dayNumber = (date: string): number => startOf(date).getTime() / millisecondsPerDay

/** The day with a number counted from 1 January 1970. */
export const dayOf = (number: number): string => dayAt(number * millisecondsPerDay)

/** The date a number of days after another, before it when negative; parts of a day are rounded. */
export const addDays = (date: string, days: number): string =>
  dayOf(dayNumber(date) + Math.round(days))

/** Place of a day in its year: 1 for 1 January. */
export const dayOfYear = (date: string): number =>
  dayNumber(date) - dayNumber(`${date.slice(0, 4)}-01-01`) + 1

/** Day of the week, 0 for Sunday to 6 for Saturday. */
export const weekdayOf = (date: string): number => startOf(date).getUTCDay()

/** Whether a day is neither a Saturday nor a Sunday; holidays are not known here. */
const isWorkingDay = (date: string): boolean => weekdayOf(date) % 6 !== 0

/**
 * The day nearest to a date on which a number of whole working days lie between both; one of these
 * itself. Days before it when the number is negative.
 */
export function workingDaysOff(date: string, days: number): string {
  const step = days < 0 ? -1 : 1
  let day = addDays(date, step)
  for (let between = 0; between < Math.abs(days) || !isWorkingDay(day); day = addDays(day, step))
    if (isWorkingDay(day)) between += 1
  return day
}

/** Month of a date, 1 to 12. */
export const monthOf = (date: string): number => Number(date.slice(5, 7))

/** Day of its month, 1 to 31. */
export const dayOfMonth = (date: string): number => Number(date.slice(8, 10))

/** The clock of a zone as the system tells it; making it takes far longer than asking it. */
const zoneClocks = new Map<string, Intl.DateTimeFormat>()

function zoneClock(zone: string): Intl.DateTimeFormat {
  const clock =
    zoneClocks.get(zone) ??
    new Intl.DateTimeFormat('en-US', { timeZone: zone, timeZoneName: 'longOffset' })
  zoneClocks.set(zone, clock)
  return clock
}

/** Whether there is a time zone of this name in the list that the system knows (IANA). */
export function isZone(name: string): boolean {
  try {
    return zoneClock(name).resolvedOptions().timeZone !== ''
  } catch {
    return false
  }
}

/**
 * Seconds by which the clock of a zone is ahead of Universal Time at noon of a day; daylight saving
 * is in the zone's own rules.
 */
export function zoneOffset(date: string, zone: string): number | undefined {
  const name =
    zoneClock(zone)
      .formatToParts(new Date(`${date}T12:00:00Z`))
      .find((p) => p.type === 'timeZoneName')?.value ?? ''
  const m = /^GMT(?:([+-])(\d\d):(\d\d))?$/.exec(name)
  return m
    ? (m[1] === '-' ? -1 : 1) * (Number(m[2] ?? 0) * 3600 + Number(m[3] ?? 0) * 60)
    : undefined
}

/** With fewer days than this to the first race a plan of months is of no use any more. */
const daysForPlan = 14

/** Whether the first race is ahead, and close. @param from, race `YYYY-MM-DD`. */
export const isClose = (race: string | undefined, from: string): boolean => {
  if (race === undefined) return false
  const left = dayNumber(race) - dayNumber(from)
  return left >= 0 && left < daysForPlan
}

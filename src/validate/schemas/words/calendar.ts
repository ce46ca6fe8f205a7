import * as z from 'zod'
import { group, holding } from './group.ts'

/** Days in the order of `weekdayOf`, and months in that of the year. */
export const weekdays = [
  'sunday',
  'monday',
  'tuesday',
  'wednesday',
  'thursday',
  'friday',
  'saturday',
] as const
export const months = [
  'january',
  'february',
  'march',
  'april',
  'may',
  'june',
  'july',
  'august',
  'september',
  'october',
  'november',
  'december',
] as const

/** How days and months are called; the short names stand in dates. */
export const calendar = z.strictObject({
  weekdays: group(...weekdays),
  months: group(...months),
  shortMonths: group(...months),
  /** A race day in calendars that people keep. */
  raceDay: holding('races'),
  /** What is to be done by a day: `head` is the head of its date, such as "Order by". */
  deadline: holding('head', 'what'),
})

import { isDay } from '../../model/day.ts'
import type { UnitSystem } from '../../model/quantity/kinds.ts'
import { isYearless } from '../fair-year.ts'

/** Whether the month or the day stands first in `3/4/2027`; `ask` where nobody has said. */
export type DayStyle = 'month-first' | 'day-first' | 'ask'

const months = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec']

/** Two numbers and a year: 8/3/2027, 8-3-27. */
const numbers = /^(\d{1,2})\s*([/-])\s*(\d{1,2})\s*\2\s*(\d{4}|\d{2})$/
/** In this form the day stands first everywhere (ISO 8601 has no points): 3.8.2027. */
const points = /^(\d{1,2})\.\s*(\d{1,2})\.\s*(\d{4}|\d{2})$/
const yearFirst = /^(\d{4})[/.-](\d{1,2})[/.-](\d{1,2})$/
const dayAndName = /^(\d{1,2})(?:st|nd|rd|th)?[\s.-]+([a-z]{3,9})\.?,?[\s-]+(\d{4}|\d{2})$/i
const nameAndDay = /^([a-z]{3,9})\.?\s+(\d{1,2})(?:st|nd|rd|th)?,?\s+(\d{4})$/i
/** A weekday in front says nothing that the date does not. */
const weekday = /^(?:mon|tues?|wed(?:nes)?|thu(?:rs)?|fri|sat(?:ur)?|sun)(?:day)?\.?,?\s+/i
/** Midnight, which some programs write behind every day. */
const midnight = /[T ]0?0:00(?::00(?:\.0+)?)?Z?$/

const dayText = (year: string, month: number, day: number): string | undefined => {
  const text = `${year.length === 2 ? `20${year}` : year}-${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`
  return isDay(text) ? text : undefined
}

const monthNamed = (name: string): number => months.indexOf(name.slice(0, 3).toLowerCase()) + 1

/** What a head says of its dates: `date (m/d/y)`. */
function dayStyleOfHead(told: string): DayStyle | undefined {
  const order = told.toLowerCase().replace(/(.)\1+/g, '$1')
  if (/^m\W*d\W*y$/.test(order)) return 'month-first'
  return /^d\W*m\W*y$/.test(order) ? 'day-first' : undefined
}

/**
 * How the dates of a column are written: as its head says, else as the units of the place have it,
 * else by those dates that can be read in one way only.
 * @param units Of the place; undefined where they are not known.
 */
export function dayStyle(
  texts: readonly string[],
  head: string,
  units: UnitSystem | undefined,
): DayStyle {
  const told = dayStyleOfHead(head)
  if (told) return told
  const parts = texts.flatMap((text) => {
    const [, a, , b] = numbers.exec(text.replace(weekday, '').trim()) ?? []
    return a === undefined ? [] : [[Number(a), Number(b)] as const]
  })
  const dayFirst = parts.some(([a, b]) => a > 12 && b <= 12)
  const monthFirst = parts.some(([a, b]) => b > 12 && a <= 12)
  if (dayFirst && monthFirst) return 'ask'
  if (units === 'us') return dayFirst ? 'ask' : 'month-first'
  return dayFirst ? 'day-first' : monthFirst ? 'month-first' : 'ask'
}

type Unread = { readonly message: string; readonly hint: string }

const wanted = 'expected a date such as 2027-06-12'

/** A date as it is written everywhere, `YYYY-MM-DD`; or why it cannot be read. */
export function readDay(written: string, style: DayStyle): string | Unread {
  const text = written.trim().replace(weekday, '').replace(midnight, '')
  const none = isYearless(text)
    ? { message: `"${written}" has no year`, hint: 'write the year behind it' }
    : { message: `"${written}" is no date`, hint: wanted }
  const [, year, second, third] = yearFirst.exec(text) ?? []
  if (year !== undefined) return dayText(year, Number(second), Number(third)) ?? none
  const [, d, m, y] = points.exec(text) ?? []
  if (y !== undefined) return dayText(y, Number(m), Number(d)) ?? none
  const [, day, name, of] = dayAndName.exec(text) ?? []
  if (of !== undefined) return dayText(of, monthNamed(name ?? ''), Number(day)) ?? none
  const [, named, dayOfIt, inYear] = nameAndDay.exec(text) ?? []
  if (inYear !== undefined) return dayText(inYear, monthNamed(named ?? ''), Number(dayOfIt)) ?? none
  const [, a = '', , b = '', of2] = numbers.exec(text) ?? []
  if (of2 === undefined) return none
  const [monthFirst, dayFirst] = [
    dayText(of2, Number(a), Number(b)),
    dayText(of2, Number(b), Number(a)),
  ]
  if (monthFirst === dayFirst || monthFirst === undefined || dayFirst === undefined)
    return monthFirst ?? dayFirst ?? none
  if (style === 'ask')
    return {
      message: `"${written}" can be ${monthFirst} or ${dayFirst}`,
      hint: 'write the one that it is; or say above the column which stands first: date (m/d/y) or date (d/m/y)',
    }
  return style === 'month-first' ? monthFirst : dayFirst
}

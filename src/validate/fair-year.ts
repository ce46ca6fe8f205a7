import { isDay } from '../model/day.ts'

const nameOfMonth = '[A-Za-z]{3,9}\\.?'
const dayOfMonth = '\\d{1,2}(?:st|nd|rd|th)?\\.?'
/** A day of no year: Nov 1, 15 Aug, 6/22. */
const yearless = new RegExp(
  `^(?:${nameOfMonth} ${dayOfMonth}|${dayOfMonth} ${nameOfMonth}|\\d{1,2}/\\d{1,2})$`,
)

/** Whether a text may be a day whose year nobody has said. */
export const isYearless = (text: string): boolean => yearless.test(text)

/** A day of no year with a year behind it, as people write it. */
export const withYear = (text: string, year: string): string =>
  text.includes('/') ? `${text}/${year}` : `${text} ${year}`

/** The year of some days that are written in full; undefined where they have none, or several. */
export function yearOf(days: readonly unknown[]): string | undefined {
  const years = days.flatMap((day) =>
    typeof day === 'string' && isDay(day) ? [day.slice(0, 4)] : [],
  )
  return new Set(years).size === 1 ? years[0] : undefined
}

/** The year of the fair: of the race days that a facility file states. */
export function fairYear(data: unknown): string | undefined {
  const days = (data as { readonly 'race-days'?: unknown } | null | undefined)?.['race-days']
  return Array.isArray(days)
    ? yearOf(days.map((day: unknown) => (day as { readonly date?: unknown } | null)?.date))
    : undefined
}

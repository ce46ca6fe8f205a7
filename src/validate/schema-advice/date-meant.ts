import { isDay } from '../../model/day.ts'
import { isYearless, withYear } from '../fair-year.ts'
import { months } from '../schemas/words/calendar.ts'

const two = (n: number): string => String(n).padStart(2, '0')
const year = (text: string): number => (text.length === 2 ? 2000 + Number(text) : Number(text))

const dayOr = (y: number, m: number, d: number): string | undefined => {
  const day = `${y}-${two(m)}-${two(d)}`
  return isDay(day) ? day : undefined
}

/** The name of a month, or its beginning. */
const monthNamed = (word: string): number =>
  word.length < 3 ? 0 : months.findIndex((m) => m.startsWith(word.toLowerCase().slice(0, 3))) + 1

/** Months in words: `August 18, 2027`, `18 Aug 2027`. */
function inWords(text: string): string | undefined {
  const [, month = '', day = '', y = ''] =
    /^([A-Za-z]{3,9})\.?\s+(\d{1,2})(?:st|nd|rd|th)?,?\s+(\d{4}|\d{2})$/.exec(text) ?? []
  const [, day2 = '', month2 = '', y2 = ''] =
    /^(\d{1,2})(?:st|nd|rd|th)?\.?\s+([A-Za-z]{3,9})\.?,?\s+(\d{4}|\d{2})$/.exec(text) ?? []
  const m = monthNamed(month || month2)
  return m === 0 ? undefined : dayOr(year(y || y2), m, Number(day || day2))
}

/**
 * What to write for a date in another style; nothing where it is no date at all.
 * @param fairYear Of the fair, which a day without a year is taken to be in.
 */
export function dateMeant(typed: string, fairYear?: string): string | undefined {
  const text = typed.trim()
  if (isYearless(text))
    return (
      (fairYear === undefined ? undefined : dateMeant(withYear(text, fairYear))) ??
      'the year is missing: write year, month, day'
    )
  const worded = inWords(text)
  if (worded !== undefined) return `write year, month, day: ${worded}`
  const [, a = '', b = '', c = ''] = /^(\d{1,4})[/.\- ](\d{1,2})[/.\- ](\d{1,4})$/.exec(text) ?? []
  if (a === '') return undefined
  if (a.length === 4) {
    const day = dayOr(Number(a), Number(b), Number(c))
    return day === undefined ? 'there is no such day' : `write ${day}`
  }
  const [usual, other] = [
    dayOr(year(c), Number(a), Number(b)),
    dayOr(year(c), Number(b), Number(a)),
  ]
  if (usual === undefined && other === undefined) return 'there is no such day'
  return usual !== undefined && other !== undefined && usual !== other
    ? `write year, month, day: ${usual}, or ${other} if the day stands first`
    : `write year, month, day: ${usual ?? other}`
}

const dates =
  /\d{4}[-/.]\d{1,2}[-/.]\d{1,2}|\d{1,2}[/.-]\d{1,2}[/.-]\d{2,4}|[A-Za-z]{3,9}\.? \d{1,2}(?:st|nd|rd|th)?,? \d{4}|\d{1,2}(?:st|nd|rd|th)?\.? [A-Za-z]{3,9}\.?,? \d{4}/g

/** All days that a text names, in order; of one that can be read in two ways the month first. */
export const datesIn = (text: string): readonly string[] =>
  (text.match(dates) ?? []).flatMap((found) =>
    isDay(found) ? [found] : (/\d{4}-\d\d-\d\d/.exec(dateMeant(found) ?? '')?.[0] ?? []),
  )

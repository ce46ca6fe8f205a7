import { inFigures } from '../../model/quantity/as-said.ts'
import { readTimeOfDay } from '../../model/time-of-day.ts'
import { type Understood, worded } from './understood.ts'

const partOfDay: ReadonlyMap<string, 'a' | 'p'> = new Map([
  ['morning', 'a'],
  ['afternoon', 'p'],
  ['evening', 'p'],
  ['night', 'p'],
])
const words: ReadonlyMap<string, string> = new Map([
  ['noon', '12:00 PM'],
  ['midday', '12:00 PM'],
])
const behindHour =
  /\s*(?:o['’]?clock)?\s*(?:,?\s*(?:in the (morning|afternoon|evening)|at (night)|(noon)))?$/i

/**
 * A time of day in letters that a facility file takes: `1 pm`, `13.30`, `noon`, `6:30 in the evening`,
 * `half past six`. What is no time comes back as it is, and so does one that says no half of the day.
 */
export function clockMeant(typed: string): string {
  const text = typed.trim()
  const whole = words.get(text.toLowerCase().replace(/^12(?::00)? /, ''))
  if (whole !== undefined) return whole
  const [, morning, night, noon] = behindHour.exec(text) ?? []
  const part = partOfDay.get((morning ?? night ?? '').toLowerCase())
  const said = text.replace(behindHour, '')
  const past = /^(half|quarter) past (\w+)$/i.exec(said)
  const hourSaid = inFigures(past?.[2] ?? said) ?? past?.[2] ?? said
  const number = past ? `${hourSaid}:${/half/i.test(past[1] ?? '') ? '30' : '15'}` : hourSaid
  const [, hour, minutes = '00', half] =
    /^(\d{1,2})(?:[:.h](\d\d))?\s*([ap]\.?m\.?)?$/i.exec(number) ?? []
  const ofDay = half?.replaceAll('.', '').toUpperCase() ?? (part && `${part.toUpperCase()}M`)
  if (hour === undefined || noon !== undefined) return text
  if (ofDay === undefined && !/[:.h]/.test(number)) return text
  const time = `${hour}:${minutes}${ofDay === undefined || Number(hour) > 12 ? '' : ` ${ofDay}`}`
  return readTimeOfDay(time) === undefined ? text : time
}

/**
 * A time of the early hours that says neither AM nor PM: races begin in the afternoon.
 * @param at Last step of the path of the entry.
 */
export const isUnclearTime = (text: string, at: string | number | undefined): boolean =>
  at === 'first-post' && /^[1-9]:[0-5]\d$/.test(text)

/** What is said of such a time: what is wrong, and what to write. */
export const unclearTime = (text: string): readonly [string, string] => [
  `"${text}" does not say whether it is in the afternoon`,
  `write ${text} PM, or ${text} AM where it is at night`,
]

/** The one time of day that a longer text has in it: `Aug 3 2027 1pm`. */
function clockIn(typed: string): string | undefined {
  const found = typed.match(
    /(?<![\d:.])\d{1,2}(?:[:.]\d\d)?\s*[ap]\.?m\b\.?|(?<![\d:.])\d{1,2}:\d\d(?![\d:])/gi,
  )
  const text = found?.length === 1 ? clockMeant(found[0] ?? '') : undefined
  return text === undefined || readTimeOfDay(text) === undefined ? undefined : text
}

/** A time of day as people type it. */
export function understandTime(
  typed: string,
  at: string | number | undefined,
  expected: string,
): Understood {
  const text = clockMeant(typed)
  if (text === '') return { value: undefined, typed: text }
  if (isUnclearTime(text, at))
    return { value: text, typed: text, fault: worded(...unclearTime(text)) }
  if (readTimeOfDay(text) !== undefined) return { value: text, typed: text }
  const taken = clockIn(typed)
  return taken === undefined
    ? { value: text, typed: text, fault: expected }
    : { value: taken, typed: taken, shown: `${typed.trim()} = ${taken}` }
}

import type { FactSpec } from '../../model/fact-spec.ts'
import { formatExact } from '../../model/quantity/format-exact.ts'
import type { Locale } from '../../model/quantity/format-quantity.ts'
import { kindOf, type UnitSystem } from '../../model/quantity/kinds.ts'
import { inDigits } from '../../model/quantity/slips.ts'
import { readTimeOfDay } from '../../model/time-of-day.ts'
import { readAs } from '../../validate/read-measured.ts'
import { type Understood, worded } from './understood.ts'

const onlyNumber = /^[-+−]?(?:\d[\d,]*)?(?:\.\d+)?(?:\s*\d+\s*[/⁄]\s*\d+|\s*[½¼¾⅛⅜⅝⅞⅓⅔])?$/

const signs: Readonly<Record<string, string>> = { EUR: '€', GBP: '£' }

/** Currencies whose sign is that of the dollar, or that have no sign of their own here. */
const signOf = (currency: string): string => signs[currency] ?? '$'

/** The unit in which a kind is said, as it is typed. */
function unitOf(spec: FactSpec, system: UnitSystem): string {
  const { unit } = kindOf(spec.kind)[system]
  return unit === '°' ? 'deg' : unit
}

/** A number said in words, alone or before what is counted: `ten` is `10`. */
export function digitsMeant(typed: string): string {
  const alone = typed.length > 2 ? inDigits(`${typed} `) : undefined
  return inDigits(typed) ?? alone?.trim() ?? typed
}

/** What somebody typed with the unit that a bare number has here. */
function withUnit(spec: FactSpec, typed: string, { system, currency }: Locale): string {
  const said = typed.trim()
  const text = digitsMeant(said)
  if (text === '' || !onlyNumber.test(text)) return text
  const unit = unitOf(spec, system)
  if (unit === '') return text
  return unit.startsWith('money')
    ? `${signOf(currency)}${text}${unit.slice('money'.length)}`
    : `${text} ${unit}`
}

/** Letters that a facility file would not take as they stand: `1 pm`, `13.30`. */
export function clockMeant(typed: string): string {
  const [, hour, minutes = '00', half] =
    /^(\d{1,2})(?:[:.h](\d\d))?\s*([ap]\.?m\.?)?$/i.exec(typed.trim()) ?? []
  if (hour === undefined || (half === undefined && !/[:.h]/.test(typed))) return typed.trim()
  const text = `${hour}:${minutes}${half ? ` ${half.replaceAll('.', '').toUpperCase()}` : ''}`
  return readTimeOfDay(text) === undefined ? typed.trim() : text
}

/** The one time of day that a longer text has in it: `Aug 3 2027 1pm`. */
function clockIn(typed: string): string | undefined {
  const found = typed.match(
    /(?<![\d:.])\d{1,2}(?:[:.]\d\d)?\s*[ap]\.?m\b\.?|(?<![\d:.])\d{1,2}:\d\d(?![\d:])/gi,
  )
  const text = found?.length === 1 ? clockMeant(found[0] ?? '') : undefined
  return text === undefined || readTimeOfDay(text) === undefined ? undefined : text
}

/** A time of day as people type it. */
export function understandTime(typed: string, expected: string): Understood {
  const text = clockMeant(typed)
  if (text === '') return { value: undefined, typed: text }
  if (readTimeOfDay(text) !== undefined) return { value: text, typed: text }
  const taken = clockIn(typed)
  return taken === undefined
    ? { value: text, typed: text, fault: expected }
    : { value: taken, typed: taken, shown: `${typed.trim()} = ${taken}` }
}

const bare = (text: string): string =>
  text.replaceAll(/[\s,]/g, '').replace('²', '2').replace('³', '3').toLowerCase()

/** What was understood, in the units of the facility and in the others, where these say more. */
function shownFor(spec: FactSpec, si: number, typed: string, locale: Locale): string | undefined {
  const other: UnitSystem = locale.system === 'us' ? 'metric' : 'us'
  const isMoney = kindOf(spec.kind).us.form === 'money'
  const said = [formatExact(si, spec.kind, locale)]
  if (!isMoney) said.push(formatExact(si, spec.kind, { ...locale, system: other }))
  const more = [...new Set(said)].filter((text) => bare(text) !== bare(typed))
  const news = isMoney && more.length > 0 && onlyNumber.test(typed) ? [] : more
  return news.length === 0 ? undefined : [typed, ...news].join(' = ')
}

const plainKinds: readonly string[] = ['ratio', 'count', 'whole']

/** A quantity as people type it: 65, 12 ft 6 in, 2 1/2 in, half a mile. */
export function understandQuantity(spec: FactSpec, typed: string, locale: Locale): Understood {
  const isClock = kindOf(spec.kind)[locale.system].form === 'clock'
  const text = isClock ? clockMeant(typed) : withUnit(spec, typed, locale)
  if (text === '') return { value: undefined, typed: text }
  const read = readAs(spec, text)
  const isPlain = plainKinds.includes(spec.kind) && /^-?\d+(\.\d+)?$/.test(text)
  const value = isPlain ? Number(text) : text
  if ('params' in read) return { value, typed: text, fault: worded(read.message, read.params.hint) }
  const shown = isClock ? undefined : shownFor(spec, read.si, text, locale)
  return shown === undefined ? { value, typed: text } : { value, typed: text, shown }
}

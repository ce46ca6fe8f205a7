import type { FactSpec } from '../../model/fact-spec.ts'
import { asSaid, inFigures, withoutAbout } from '../../model/quantity/as-said.ts'
import { formatExact } from '../../model/quantity/format-exact.ts'
import type { Locale } from '../../model/quantity/format-quantity.ts'
import { kindOf, type UnitSystem } from '../../model/quantity/kinds.ts'
import { readAs } from '../../validate/read-measured.ts'
import { clockMeant } from './typed-time.ts'
import { type Understood, worded } from './understood.ts'

const onlyNumber = /^[-+−]?(?:\d[\d,]*)?(?:\.\d+)?(?:[\s-]*\d+\s*[/⁄]\s*\d+|\s*[½¼¾⅛⅜⅝⅞⅓⅔])?$/

const signs: Readonly<Record<string, string>> = { EUR: '€', GBP: '£' }

/** Currencies whose sign is that of the dollar, or that have no sign of their own here. */
const signOf = (currency: string): string => signs[currency] ?? '$'

/** The unit in which a kind is said, as it is written everywhere. */
function unitOf(spec: FactSpec, system: UnitSystem): string {
  const { unit } = kindOf(spec.kind)[system]
  return unit === '°'
    ? 'deg'
    : unit.replace(/(?<=ft|yd|m)[23]$/, (power) => (power === '2' ? '²' : '³'))
}

/** What somebody typed with the unit that a bare number has here. */
export function withUnit(spec: FactSpec, typed: string, { system, currency }: Locale): string {
  const said = typed.trim()
  const text = inFigures(said) ?? asSaid(said)
  if (text === '' || !onlyNumber.test(text)) return text
  const unit = unitOf(spec, system)
  // A share said as a part of one is asked about.
  if (unit === '' || (unit === '%' && Number(text) > 0 && Number(text) < 1)) return text
  return unit.startsWith('money')
    ? `${signOf(currency)}${text}${unit.slice('money'.length)}`
    : `${text} ${unit}`
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

/** `4 volunteers` and `twice` as the file has them. */
const countedKinds: readonly string[] = ['count', 'whole']

/** A quantity as people type it: 65, 12 ft 6 in, 2 1/2 in, half a mile. */
export function understandQuantity(spec: FactSpec, typed: string, locale: Locale): Understood {
  const isClock = kindOf(spec.kind)[locale.system].form === 'clock'
  const exact = withoutAbout(typed)
  const said = isClock ? clockMeant(exact.text) : withUnit(spec, exact.text, locale)
  // What is no more than an estimate stays one in the file, and every number marks it that rests on it.
  const text = exact.isRough && said !== '' ? `about ${said}` : said
  if (text === '') return { value: undefined, typed: text }
  const read = readAs(spec, text)
  const isPlain = plainKinds.includes(spec.kind) && /^-?\d+(\.\d+)?$/.test(text)
  const value = isPlain ? Number(text) : text
  if ('params' in read) return { value, typed: text, fault: worded(read.message, read.params.hint) }
  if (countedKinds.includes(spec.kind) && !isPlain)
    return { value: read.si, typed: String(read.si), shown: `${typed} = ${read.si}` }
  const shown = isClock ? undefined : shownFor(spec, read.si, text, locale)
  return shown === undefined ? { value, typed: text } : { value, typed: text, shown }
}

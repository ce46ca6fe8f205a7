import { dayOf } from '../day.ts'
import { timeOfDay } from '../time-of-day.ts'
import { type KindName, kindOf, type Rounding, type Style, type UnitSystem } from './kinds.ts'
import { decimalText, moneyText } from './number-text.ts'
import { findUnit } from './units.ts'

/** To which side a printed value was rounded, and to what: `1/4 in`. */
export type Rounded = { readonly mode: Rounding['mode']; readonly step: string }

/** A quantity as it is printed: `number` and `unit` stand apart because the number is set large. */
export type Printed = {
  readonly number: string
  readonly unit: string
  readonly text: string
  readonly rounding: Rounded
}

/** What printing must know about the facility. */
export type Locale = {
  readonly system: UnitSystem
  readonly currency: string
  /** In another language: words for the units that are no symbols. */
  readonly unitWords?: UnitWords
}

/** Units that are written out, for one and for more, and the halves of a day. */
export const spelledUnits = ['ton', 'tons', 'day', 'days', 'acre', 'acres', 'AM', 'PM'] as const
export type UnitWords = Readonly<Record<(typeof spelledUnits)[number], string>>

const isSpelled = (unit: string): unit is (typeof spelledUnits)[number] =>
  spelledUnits.some((u) => u === unit)

/** A unit as it stands after numbers: symbols as they are, words in the language of the manual. */
export const unitText = ({ label, unit }: Style, locale: Locale): string =>
  (label ?? unit)
    .split('/')
    .map((part) => spelledUnit(part, locale) ?? part)
    .join('/')

/** A unit that is written out, in the language of the manual; others are symbols. */
export const spelledUnit = (unit: string, { unitWords }: Locale): string | undefined =>
  unitWords && isSpelled(unit) ? unitWords[unit] : undefined

/** The unit after just one: a ton, a day, an acre. */
function unitOfOne(style: Style, locale: Locale): string {
  const one = (style.label ?? style.unit).replace(/^(ton|day|acre)s(?=$|\/)/, '$1')
  return unitText({ ...style, label: one }, locale)
}

/** Rounds to a step; a tiny tolerance keeps 3.0000000001 loads from becoming 4. */
export function roundTo(value: number, { step, mode }: Rounding): number {
  const n = value / step
  const nearest = Math.round(n)
  if (mode === 'nearest' || Math.abs(n - nearest) < 1e-6 * Math.max(1, Math.abs(n)))
    return nearest * step
  return (mode === 'up' ? Math.ceil(n) : Math.floor(n)) * step
}

/** How many of a unit expression such as `gal/min` or `ft3` an SI value is. */
export function toUnit(si: number, expression: string): number {
  if (expression === '') return si
  const [top = '', ...under] = expression === 'km/h' ? [expression] : expression.split('/')
  if (expression === 'MJ/m2') return si / 1e6
  const factor = under.reduce((f, name) => f / factorOf(name), factorOf(top))
  return si / factor - (under.length === 0 ? (findUnit(top)?.offset ?? 0) : 0)
}

function factorOf(name: string): number {
  const direct = findUnit(name)
  if (direct) return direct.factor
  const base = findUnit(name.slice(0, -1))
  const power = Number(name.slice(-1))
  if (!base || !(power === 2 || power === 3)) throw new RangeError(`no unit ${name}`)
  return base.factor ** power
}

const places = (step: number): number =>
  Number.isInteger(step) ? 0 : Math.min(4, (String(step).split('.')[1] ?? '').length)

const gcd = (a: number, b: number): number => (b === 0 ? a : gcd(b, a % b))

/** 2.25 with step 1/4 is `2 1/4`. */
function fraction(value: number, step: number): string {
  const parts = Math.round(1 / step)
  const total = Math.round(Math.abs(value) * parts)
  const whole = Math.floor(total / parts)
  const rest = total % parts
  const sign = value < 0 && total > 0 ? '−' : ''
  if (rest === 0) return `${sign}${decimalText(whole, 0)}`
  const d = gcd(rest, parts)
  return `${sign}${whole > 0 ? `${decimalText(whole, 0)} ` : ''}${rest / d}/${parts / d}`
}

/** A value in its unit as a mixed fraction: `2 1/4 in`. */
export const fractionText = (value: number, step: number, unit: string): string =>
  `${fraction(value, step)} ${unit}`

function duration(minutes: number): string {
  const h = Math.floor(minutes / 60)
  const min = Math.round(minutes - 60 * h)
  if (h === 0) return `${min} min`
  return min === 0 ? `${h} h` : `${h} h ${min} min`
}

function roundedAs({ step, mode, form }: Style, unit: string): Rounded {
  const number = form === 'fraction' ? fraction(step, step) : decimalText(step, places(step))
  return { mode, step: unit === '' ? number : `${number} ${unit}` }
}

/** The style of a kind in a unit system; a figure may ask for another rounding. */
export const styleOf = (kind: KindName, system: UnitSystem, round?: Rounding['mode']): Style => {
  const found: Style = kindOf(kind)[system]
  return round ? { ...found, mode: round } : found
}

/**
 * Prints an SI value with the rounding of the trade.
 * @param si Value in SI units (or a plain number).
 * @param kind What kind of quantity it is.
 * @param locale Unit system and currency of the facility.
 * @param round Rounds up, down or to the nearest instead of the kind's own way.
 */
export function formatQuantity(
  si: number,
  kind: KindName,
  locale: Locale,
  round?: Rounding['mode'],
): Printed {
  const s = styleOf(kind, locale.system, round)
  const value = roundTo(toUnit(si, s.unit), s)
  const unit = unitText(s, locale)
  if (s.form === 'duration') {
    const text = duration(value)
    const at = text.lastIndexOf(' ')
    return {
      number: text.slice(0, at),
      unit: text.slice(at + 1),
      text,
      rounding: roundedAs(s, 'min'),
    }
  }
  if (s.form === 'clock') {
    const { number, unit: half } = timeOfDay(value, locale.system)
    const unit = spelledUnit(half, locale) ?? half
    const text = `${number} ${unit}`.trimEnd()
    return { number, unit, text, rounding: roundedAs(s, 'min') }
  }
  if (s.form === 'date') {
    const text = dayOf(value)
    return { number: text, unit: '', text, rounding: roundedAs(s, '') }
  }
  if (s.form === 'money') {
    const number = moneyText(value, locale.currency, s.step < 1 ? 2 : 0)
    const per = unit.replace('money', '')
    return { number, unit: per, text: number + per, rounding: roundedAs(s, locale.currency) }
  }
  // "12 mph" when it is just that; "6.0" only where rounding made it so.
  const exact =
    Number.isInteger(roundTo(value, { step: 1e-6, mode: 'nearest' })) &&
    Math.abs(toUnit(si, s.unit) - value) < 1e-6 * Math.max(1, Math.abs(value))
  const number =
    s.form === 'fraction' ? fraction(value, s.step) : decimalText(value, exact ? 0 : places(s.step))
  // One ton, one day: the only unit names that change with the number.
  const named = number === '1' ? unitOfOne(s, locale) : unit
  // A degree sign stands close to its number; every other unit is set off from it.
  const text = named === '' ? number : named === '°' ? `${number}°` : `${number} ${named}`
  return {
    number,
    unit: named,
    text,
    rounding: roundedAs(s, s.step === 1 ? unitOfOne(s, locale) : unit),
  }
}

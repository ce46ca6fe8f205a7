import {
  formatQuantity,
  fractionText,
  type Locale,
  roundTo,
  styleOf,
  toUnit,
  unitText,
} from './format-quantity.ts'
import type { KindName } from './kinds.ts'
import { moneyText, significantText } from './number-text.ts'

/** Significant digits. */
const [forSums, forReading] = [4, 3]

/** Kinds that are read off a ruler. */
const onRuler: ReadonlySet<KindName> = new Set(['depth', 'fineDepth', 'dent'])

/** The number of a quantity in a unit with up to four significant digits, never as 1e-7. */
export const exactNumber = (si: number, unit: string, digits = forSums): string =>
  significantText(toUnit(si, unit), digits)

/** A price with as many digits as it has: a gallon for $0.006. */
const exactMoney = (value: number, unit: string, locale: Locale): string =>
  moneyText(value, locale.currency, 2, Math.abs(value) < 1 ? 5 : 2) + unit.replace('money', '')

/**
 * Prints an input as it goes into a formula: in the trade's rounding where that changes nothing,
 * else with four significant digits, so that a reader who works the sum again gets the same answer.
 * @param use In prose, and of what somebody typed, three digits are enough; what people measure with
 *   a ruler is told in prose in sixteenths of an inch, as the ruler has them.
 */
export function formatExact(
  si: number,
  kind: KindName,
  locale: Locale,
  use: 'sum' | 'prose' | 'typed' = 'sum',
): string {
  const style = styleOf(kind, locale.system)
  const value = toUnit(si, style.unit)
  const rounded = roundTo(value, { step: style.step, mode: 'nearest' })
  // Times that are printed in quarters of an hour are worked out to the minute.
  if (style.form === 'clock') return formatQuantity(si, 'clock', locale, 'nearest').text
  if (
    style.form === 'date' ||
    Math.abs(rounded - value) <= 1e-6 * Math.max(Math.abs(value), style.step)
  )
    return formatQuantity(si, kind, locale, 'nearest').text
  if (style.form === 'money') return exactMoney(value, style.unit, locale)
  const finer =
    style.form === 'fraction'
      ? [8, 16].find(
          (parts) => Math.abs(roundTo(value, { step: 1 / parts, mode: 'nearest' }) - value) < 1e-6,
        )
      : undefined
  if (finer !== undefined) return fractionText(value, 1 / finer, unitText(style, locale))
  if (
    use === 'prose' &&
    onRuler.has(kind) &&
    style.form === 'fraction' &&
    Math.abs(value) >= 1 / 16
  )
    return fractionText(value, 1 / 16, unitText(style, locale))
  const unit = unitText(style, locale)
  const number = exactNumber(si, style.unit, use === 'sum' ? forSums : forReading)
  return unit === '' ? number : `${number}${unit === '°' ? '' : ' '}${unit}`
}

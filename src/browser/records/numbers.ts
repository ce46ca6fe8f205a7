import { factSpec } from '../../model/fact-spec.ts'
import { formatExact } from '../../model/quantity/format-exact.ts'
import {
  formatQuantity,
  type Locale,
  styleOf,
  toUnit,
} from '../../model/quantity/format-quantity.ts'
import type { KindName, UnitSystem } from '../../model/quantity/kinds.ts'
import { parseQuantity } from '../../model/quantity/parse-quantity.ts'
import { type KeptNumber, keptNumbers } from '../../model/records.ts'
import { isBare } from '../../validate/imports/table-columns.ts'
import { readMeasured } from '../../validate/read-measured.ts'

const kindOfNumber = (name: KeptNumber): KindName => factSpec(keptNumbers[name])?.kind ?? 'ratio'

/** The unit of a number in the units of the facility, as it stands in the head of a column. */
export function unitOf(name: KeptNumber, system: UnitSystem): string {
  const { label, unit } = styleOf(kindOfNumber(name), system)
  return label ?? unit
}

/** A number as it is kept: with its unit. */
export function withUnit(name: KeptNumber, text: string, system: UnitSystem): string {
  const [said, unit] = [text.trim(), unitOf(name, system)]
  return unit !== '' && /\d|[¼-¾⅓-⅞]/.test(said) && !/[a-z°%'"]/i.test(said)
    ? `${said} ${unit}`
    : said
}

/** A kept number as it is written in a field or column that says the unit. */
export function withoutUnit(name: KeptNumber, text: string, system: UnitSystem): string {
  const unit = unitOf(name, system)
  const bare = text.endsWith(` ${unit}`) ? text.slice(0, -unit.length - 1) : text
  return isBare(bare) ? bare : text
}

/** SI value of a kept number; why there is none where it cannot be read or cannot be true. */
export function numberOf(
  name: KeptNumber,
  text: string,
): { readonly si: number } | { readonly fault: 'number' | 'outside' } {
  const read = readMeasured(keptNumbers[name], text)
  if ('si' in read) return { si: read.si }
  return { fault: read.params.code === 'quantity/range' ? 'outside' : 'number' }
}

/** The same, or undefined. */
export function soundNumber(name: KeptNumber, text: string | undefined): number | undefined {
  const read = text === undefined ? undefined : numberOf(name, text)
  return read && 'si' in read ? read.si : undefined
}

/** The least and the most that can be true of a number, as printed. */
export function limitsOf(name: KeptNumber, locale: Locale): readonly [string, string] {
  const [low, high] = (factSpec(keptNumbers[name])?.range ?? ['0', '0']).map((text) => {
    const read = parseQuantity(text, { plain: true })
    return read.ok ? exactText(name, read.quantity.si, locale) : text
  })
  return [low ?? '', high ?? '']
}

/** A value as precisely as it is known. */
export const exactText = (name: KeptNumber, si: number, locale: Locale): string =>
  formatExact(si, kindOfNumber(name), locale, 'typed')

/** A value as the manual prints it. */
export const printedText = (name: KeptNumber, si: number, locale: Locale): string =>
  formatQuantity(si, kindOfNumber(name), locale, 'nearest').text

/** A place in a column whose head says the unit: to a hundredth, which no tape reads finer. */
export const placeText = (name: 'station' | 'offset', si: number, system: UnitSystem): string =>
  String(Number(toUnit(si, styleOf(kindOfNumber(name), system).unit).toFixed(2)))

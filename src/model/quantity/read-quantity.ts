import type { ProblemCode } from '../problem.ts'
import { readTimeOfDay } from '../time-of-day.ts'
import { type Dims, dimensionless, findUnit, multiplyDims, sameDims, type Unit } from './units.ts'

/**
 * A quantity read from text: its value in SI (kelvin, kilograms, square meters …) and its
 * dimensions.
 */
export type Quantity = {
  readonly si: number
  readonly dims: Dims
  readonly text: string
  /** Whether it was said as no more than an estimate: `about 60 ft`. */
  readonly isRough?: boolean
}

/** Why a text is no quantity; `at` and `length` point into that text. */
type QuantityFault = {
  readonly code: Extract<ProblemCode, `quantity/${string}`>
  readonly message: string
  readonly hint?: string | undefined
  /** What stands where a unit should. */
  readonly unit?: string
  /** The hint says all that is to be typed, so that no example is needed beside it. */
  readonly saysAll?: boolean
  readonly at: number
  readonly length: number
}

export type ParsedQuantity =
  | { readonly ok: true; readonly quantity: Quantity }
  | { readonly ok: false; readonly fault: QuantityFault }

const vulgar: Readonly<Record<string, string>> = {
  '½': '1/2',
  '¼': '1/4',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
  '⅓': '1/3',
  '⅔': '2/3',
}
const numberPattern = String.raw`[-+]?(?:\d{1,3}(?:,\d{3})+(?:\.\d+)?|\d+(?:\.\d+)?|\.\d+)`
const fractionPattern = /^\s*([-+]?\d+)\s*[/⁄]\s*(\d+)/
const mixedPattern = new RegExp(String.raw`^\s*(${numberPattern})(?:[ -]+(\d+)\s*[/⁄]\s*(\d+))?`)
const currency = /^\s*([$€£])/

const toNumber = (text: string): number => Number(text.replaceAll(',', ''))

/** Reads `2 1/2`, `1/4`, `2,000`, `0.5`; returns the value and how many characters it took. */
function readNumber(text: string): { value: number; length: number } | undefined {
  const plain = fractionPattern.exec(text)
  const m = plain ?? mixedPattern.exec(text)
  if (!m) return undefined
  const [whole, first = '', second, third] = m
  const [n, d] = plain ? [first, second] : [second, third]
  if (n === undefined || d === undefined) return { value: toNumber(first), length: whole.length }
  if (Number(d) === 0) return undefined
  const base = plain ? 0 : toNumber(first)
  return { value: base + (base < 0 ? -1 : 1) * (Number(n) / Number(d)), length: whole.length }
}

const squareOrCubic: Readonly<Record<string, number>> = { sq: 2, square: 2, cu: 3, cubic: 3 }

/** Reads one factor such as `ft`, `ft3`, `ft²`, `cu yd`, `short ton`. */
function readFactor(words: string): { unit: Unit; power: number } | undefined {
  const plain = words
    .trim()
    .replace('²', '2')
    .replace('³', '3')
    .replace('^', '')
    .replace(/([a-z])\.$/, '$1')
  const known = findUnit(plain)
  if (known) return { unit: known, power: 1 }
  const lead = /^(sq|square|cu|cubic)\.?\s+(.+)$/.exec(plain)
  if (lead) {
    const unit = findUnit(lead[2] ?? '')
    return unit && { unit, power: squareOrCubic[lead[1] ?? ''] ?? 1 }
  }
  const powered = /^(.+?)([23])$/.exec(plain)
  const unit = powered ? findUnit((powered[1] ?? '').trim()) : undefined
  return unit && { unit, power: Number(powered?.[2]) }
}

type UnitProduct = { factor: number; dims: Dims; offset: number }

/** Reads a unit expression such as `gal/min`, `lb/cu ft`, `gal per h`, `gallons a minute`, `kg/m3`. */
function readUnits(text: string, at: number): UnitProduct | QuantityFault {
  const whole = readFactor(text)
  const parts = whole ? [text] : text.split(/\s*\/\s*|\s+(?:per|an?)\s+/)
  let product: UnitProduct = { factor: 1, dims: dimensionless, offset: 0 }
  let from = 0
  for (const [i, part] of parts.entries()) {
    const start = text.indexOf(part, from)
    from = start + part.length
    const factor = readFactor(part)
    if (!factor) {
      return {
        code: 'quantity/unknown-unit',
        message: `unknown unit "${part.trim()}"`,
        unit: part.trim(),
        at: at + Math.max(0, start),
        length: Math.max(1, part.length),
      }
    }
    const power = (i === 0 ? 1 : -1) * factor.power
    product = {
      factor: product.factor * factor.unit.factor ** power,
      dims: multiplyDims(product.dims, factor.unit.dims, power),
      offset: parts.length === 1 && factor.power === 1 ? factor.unit.offset : 0,
    }
  }
  return product
}

const fault = (
  code: QuantityFault['code'],
  message: string,
  at: number,
  length: number,
  hint?: string,
): ParsedQuantity => ({
  ok: false,
  fault: { code, message, at, length: Math.max(1, length), hint },
})

/** Longer than any quantity; patterns that look for one would take long over it. */
export const longest = 200

const timeDims = findUnit('s')?.dims ?? dimensionless

/**
 * Reads a quantity in the forms that are allowed; what else somebody may have meant is for others to
 * say. Looks at nothing behind it, which phones of some years ago cannot.
 */
export function readQuantity(
  text: string,
  options: { readonly plain?: boolean } = {},
): ParsedQuantity {
  if (text.length > longest)
    return fault('quantity/number', 'no quantity is as long as this text', 0, text.length)
  const clock = readTimeOfDay(text)
  if (clock !== undefined)
    return { ok: true, quantity: { si: clock, dims: timeDims, text: text.trim() } }
  // Kept the same length where possible, so that positions in faults still point into the author's
  // text.
  // A minus as it is printed is a minus.
  const source = text
    .replaceAll('−', '-')
    .replace(
      /[½¼¾⅛⅜⅝⅞⅓⅔]/g,
      (c, i: number) => `${i > 0 && /\d/.test(text[i - 1] ?? '') ? ' ' : ''}${vulgar[c]}`,
    )
  const money = currency.exec(source)
  let rest = money ? source.slice(money[0].length) : source
  let at = money ? money[0].length : 0
  if (rest.trim() === '')
    return fault(
      'quantity/number',
      'no number here',
      0,
      text.length,
      'write a number and a unit, such as "3 in"',
    )
  let total = 0
  let dims: Dims | undefined
  let least = 0
  while (rest.trim() !== '') {
    const number = readNumber(rest)
    if (!number)
      return fault(
        'quantity/number',
        `"${rest.trim()}" does not begin with a number`,
        at + rest.search(/\S/),
        rest.trim().length,
      )
    at += number.length
    rest = rest.slice(number.length)
    // The unit runs up to the next number that begins a further part, as in "452 ft 6 in".
    const next = /([a-zA-Z"'″′²³°%\d]|[a-z]\.)\s+(?=[-+.\d])|['′](?=\d)/.exec(rest)
    const unitText = next ? rest.slice(0, next.index + (next[1]?.length ?? 1)) : rest
    const lead = unitText.search(/\S/)
    const written = money ? `$ ${unitText.trim()}`.trim() : unitText.trim()
    if (written === '') {
      if (options.plain)
        return { ok: true, quantity: { si: number.value, dims: dimensionless, text: text.trim() } }
      return fault(
        'quantity/no-unit',
        `"${text.trim()}" has no unit`,
        0,
        text.length,
        'every quantity is written with its unit, such as "3 in"',
      )
    }
    const units = readUnits(written, at + Math.max(0, lead) - (money ? 2 : 0))
    if ('code' in units) return { ok: false, fault: units }
    if (dims && !sameDims(dims, units.dims))
      return fault('quantity/dimension', `"${text.trim()}" adds unlike units`, at, unitText.length)
    // `3 hr 4 days` was most likely meant as something else.
    if (dims && units.factor > least)
      return fault(
        'quantity/number',
        `"${text.trim()}" has a smaller unit before a larger one`,
        0,
        text.length,
        'write one value; of two parts the larger unit stands first, as in 4 ft 6 in',
      )
    least = units.factor
    dims = units.dims
    total += (number.value + units.offset) * units.factor
    at += unitText.length
    rest = rest.slice(unitText.length)
  }
  return { ok: true, quantity: { si: total, dims: dims ?? dimensionless, text: text.trim() } }
}

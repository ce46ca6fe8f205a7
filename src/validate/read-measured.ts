import { type FactSpec, factSpec } from '../model/fact-spec.ts'
import { kindWords } from '../model/quantity/kind-words.ts'
import { kindOf } from '../model/quantity/kinds.ts'
import { parseQuantity } from '../model/quantity/parse-quantity.ts'
import type { Quantity } from '../model/quantity/read-quantity.ts'
import { sameDims } from '../model/quantity/units.ts'
import type { IssueParams } from './check-schema.ts'

const si = (text: string): number => {
  const parsed = parseQuantity(text, { plain: true })
  if (!parsed.ok) throw new RangeError(`reference data: ${text}: ${parsed.fault.message}`)
  return parsed.quantity.si
}

const isPlain = (spec: FactSpec): boolean => ['ratio', 'count', 'whole'].includes(spec.kind)

const isWhole = (spec: FactSpec): boolean => ['count', 'whole'].includes(spec.kind)

/** A number as it is typed in a unit of the kind. */
function inUnit(number: string, { unit, form }: { unit: string; form?: string }): string[] {
  if (unit === '' || form === 'clock' || form === 'date') return []
  const money = /^money(.*)$/.exec(unit)
  return [money ? `$${number}${money[1]}` : `${number} ${unit === '°' ? 'deg' : unit}`]
}

/** What a bare number looks like with a unit behind it; which one only its writer knows. */
function withUnit(spec: FactSpec, number: string): string | undefined {
  const { us, metric } = kindOf(spec.kind)
  const ways = [...new Set([us, metric].flatMap((way) => inUnit(number, way)))]
  return ways.length === 0 ? undefined : `write it with its unit: ${ways.join(' or ')}`
}

/** The number before what is counted: `3 volunteers`. */
const counted = /^\s*(\d+)\s+[a-z][a-z -]*$/i

/** What a point before three digits may have meant. */
const pointHint = (written: string | number): string => {
  const [, whole, rest] = /^\s*(\d{1,3})\.(\d{3}(?:\D.*)?)$/.exec(String(written)) ?? []
  return whole === undefined ? '' : `; where thousands are meant, write ${whole},${rest}`
}

export type Fault = { message: string; params: IssueParams }

/** Checks one written quantity against what is known of the fact. */
export function readAs(spec: FactSpec, written: unknown): Quantity | Fault {
  const kind = { ...kindOf(spec.kind), ...kindWords(spec.kind) }
  const expected = `expected ${kind.means} such as "${kind.example}"`
  if (written === null)
    return {
      message: 'nothing stands here',
      params: { code: 'schema/type', hint: `${expected}; or delete the line` },
    }
  if (typeof written === 'number' && !Number.isFinite(written))
    return {
      message: 'what stands here is no number that can be counted',
      params: { code: 'quantity/number', hint: expected },
    }
  if (typeof written === 'number' && !isPlain(spec))
    return {
      message: `${written} has no unit`,
      params: {
        code: 'quantity/no-unit',
        hint: withUnit(spec, String(written)) ?? expected,
      },
    }
  if (typeof written !== 'string' && typeof written !== 'number')
    return {
      message: `${spec.label} is written as a number with its unit`,
      params: { code: 'schema/type', hint: expected },
    }
  const parsed = parseQuantity(String(written), { plain: isPlain(spec) })
  if (!parsed.ok) {
    const { code, message, hint, at, length, saysAll } = parsed.fault
    const text = String(written).trim()
    const [, count] = isWhole(spec) ? (counted.exec(text) ?? []) : []
    if (count !== undefined)
      return {
        message: `"${text}" is more than a number`,
        params: { code: 'quantity/number', hint: `write ${count} alone` },
      }
    // A price of something else than is asked for here is not offered.
    const [, price] = /^write (\$\S+?)(?:;|$)/.exec(hint ?? '') ?? []
    const offered = price === undefined ? undefined : parseQuantity(price)
    if (offered?.ok && !sameDims(offered.quantity.dims, kind.dims))
      return { message, params: { code, at, length, hint: expected } }
    const bare = code === 'quantity/no-unit' ? withUnit(spec, text) : undefined
    if (bare !== undefined) return { message, params: { code, at, length, hint: bare } }
    return {
      message,
      params: {
        code,
        at,
        length,
        hint: !hint ? expected : saysAll ? hint : `${hint} (${expected})`,
      },
    }
  }
  if (!sameDims(parsed.quantity.dims, kind.dims))
    return {
      message: `"${written}" is not ${kind.means}`,
      params: { code: 'quantity/dimension', hint: expected },
    }
  if (isWhole(spec) && !Number.isInteger(parsed.quantity.si))
    return {
      message: `"${written}" is no whole number`,
      params: { code: 'quantity/number', hint: `${spec.label} are counted; ${expected}` },
    }
  const [low, high] = spec.range
  // A tolerance of one part in a million keeps "1.6 km" from failing against "1 mi" limits by
  // rounding.
  const slack = 1e-6 * Math.max(Math.abs(si(low)), Math.abs(si(high)))
  if (!(parsed.quantity.si >= si(low) - slack && parsed.quantity.si <= si(high) + slack)) {
    return {
      message: `"${written}" is outside what can be true of ${spec.label}`,
      params: { code: 'quantity/range', hint: `expected ${low} to ${high}${pointHint(written)}` },
    }
  }
  return parsed.quantity
}

/**
 * Reads a quantity by the fact whose kind and range it has.
 * @throws RangeError when there is no such fact.
 */
export const readMeasured = (fact: string, written: unknown): Quantity | Fault => {
  const spec = factSpec(fact)
  if (!spec) throw new RangeError(`no fact ${fact}`)
  return readAs(spec, written)
}

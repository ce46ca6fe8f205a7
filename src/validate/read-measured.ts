import { type FactSpec, factSpec } from '../model/fact-spec.ts'
import { asSaid, inFigures } from '../model/quantity/as-said.ts'
import { kindWords } from '../model/quantity/kind-words.ts'
import { kindOf } from '../model/quantity/kinds.ts'
import { parseQuantity } from '../model/quantity/parse-quantity.ts'
import type { ParsedQuantity, Quantity } from '../model/quantity/read-quantity.ts'
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

const often: ReadonlyMap<string, string> = new Map([
  ['once', '1'],
  ['twice', '2'],
])

/** What is counted, as a number alone: `3 volunteers`, `ten`, `twice`. */
function countIn(text: string): string {
  const alone = often.get(text.trim().toLowerCase()) ?? inFigures(text) ?? asSaid(text)
  return counted.exec(alone)?.[1] ?? alone
}

const yard = /\b(?:yd|yds|yards?)\b(?!\s*[23²³])/i

/** Of stone a yard is a cubic yard: where only that fits, it is taken for one. */
function readIn(text: string, spec: FactSpec): ParsedQuantity {
  const parsed = parseQuantity(text, { plain: isPlain(spec) })
  const { dims, us } = kindOf(spec.kind)
  if (us.form === 'money' && /^\s*(?:free|no charge)\s*$/i.test(text))
    return { ok: true, quantity: { si: 0, dims, text } }
  if (!parsed.ok || sameDims(parsed.quantity.dims, dims) || !yard.test(text)) return parsed
  if (/\b(?:sq|square|cu|cubic)\b/i.test(text)) return parsed
  const cubic = parseQuantity(text.replace(yard, 'cubic yard'))
  return cubic.ok && sameDims(cubic.quantity.dims, dims) ? cubic : parsed
}

/** A share that somebody may have said as a part of one: 0.06 for 6 %. */
function sharesOf(spec: FactSpec, number: string): string | undefined {
  const part = Number(number)
  const isPart = kindOf(spec.kind).us.unit === '%' && part > 0 && part < 1
  const percent = `${Number((part * 100).toPrecision(12))} %`
  return isPart
    ? `write it with its unit: ${percent}, or ${number} % where it is so little`
    : undefined
}

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
        hint: sharesOf(spec, String(written)) ?? withUnit(spec, String(written)) ?? expected,
      },
    }
  if (typeof written !== 'string' && typeof written !== 'number')
    return {
      message: `${spec.label} is written as a number with its unit`,
      params: { code: 'schema/type', hint: expected },
    }
  const parsed = readIn(isWhole(spec) ? countIn(String(written)) : String(written), spec)
  if (!parsed.ok) {
    const { code, message, at, length, saysAll } = parsed.fault
    // Of what is counted there is no half.
    const hint = isWhole(spec)
      ? parsed.fault.hint?.replace(/, such as [\d ./]+, the middle/, '')
      : parsed.fault.hint
    const text = String(written).trim()
    // A price of something else than is asked for here is not offered.
    const [, price] = /^write (\$\S+?)(?:;|$)/.exec(hint ?? '') ?? []
    const offered = price === undefined ? undefined : parseQuantity(price)
    if (offered?.ok && !sameDims(offered.quantity.dims, kind.dims))
      return { message, params: { code, at, length, hint: expected } }
    const bare =
      code === 'quantity/no-unit' ? (sharesOf(spec, text) ?? withUnit(spec, text)) : undefined
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

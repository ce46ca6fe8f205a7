import type { FigureInput, Worksheet } from '../model/figure.ts'
import { exactNumber, formatExact } from '../model/quantity/format-exact.ts'
import { type Locale, styleOf } from '../model/quantity/format-quantity.ts'
import { isRefusal, type Refusal } from './calculation.ts'
import type { Use } from './uses/use.ts'

const name = /@([a-zA-Z][a-zA-Z0-9]*)/g

/**
 * `2 1/4 in` and `25 %` as TeX: the number, then its unit upright; a time of day, `13:00`, as it
 * is.
 */
export function quantityTex(text: string): string {
  if (/^\d+:\d\d$/.test(text)) return `\\text{${text}}`
  const mixed = /^(?:([−-]?[\d,]+)\s)?(\d+)\/(\d+)(?:\s+(.*))?$/.exec(text)
  const plain = /^([−-]?[\d.,$€£A-Z]*[\d.,]+)?\s*(.*)$/.exec(text)
  const [whole = '', n, d, unit = ''] = mixed
    ? mixed.slice(1)
    : [plain?.[1], undefined, undefined, plain?.[2]]
  const fraction = n === undefined ? '' : `\\tfrac{${n}}{${d}}`
  const number = whole
    .replaceAll(',', '{,}')
    .replace(/^[A-Z]+\$?|\$/, (c) => `\\text{${c.replace('$', '\\$')}}`)
    .replace('−', '-')
  return unit === ''
    ? `${number}${fraction}`
    : `${number}${fraction}\\,\\text{${unit.replaceAll('%', '\\%')}}`
}

/**
 * Symbols stand side by side for a product; numbers need the sign. A thin space after a comma only
 * parts a list.
 */
const withSigns = (tex: string): string =>
  tex
    .replace(/(?<!,)\\,(?=@)/g, ' \\cdot ')
    .replace(/(@[a-zA-Z][a-zA-Z0-9]*)\\,(?=[\\(])/g, '$1 \\cdot ')

/** Replaces `@name` by what stands for it. */
const put = (tex: string, stand: (input: string) => string | undefined): string =>
  tex.replace(name, (all, input: string) => stand(input) ?? all)

const grouped = (tex: string): string => `{${tex}}`

/**
 * The formula of each output, once in symbols and once with this facility's numbers and units put
 * in. Numbers keep their units, so the line is a true statement in any system; empirical formulas
 * get bare numbers in the unit they ask for.
 */
export function formulaLines(
  use: Use,
  inputs: readonly FigureInput[],
  values: Readonly<Record<string, number | Refusal>>,
  locale: Locale,
): Worksheet['formulas'] {
  const { calculation } = use
  const byName = new Map(inputs.map((i) => [i.name, i]))
  return Object.entries(calculation.outputs).map(([output, spec]) => {
    const symbol = (input: string): string | undefined => {
      const found = calculation.inputs[input]?.symbol ?? calculation.outputs[input]?.symbol
      return found === undefined ? undefined : grouped(found)
    }
    const number = (input: string): string | undefined => {
      const given = byName.get(input)
      const unit = calculation.inputs[input]?.formulaUnit
      if (given)
        return grouped(unit === undefined ? quantityTex(given.text) : exactNumber(given.si, unit))
      const earlier = values[input]
      const outSpec = calculation.outputs[input]
      if (outSpec?.formulaUnit !== undefined && typeof earlier === 'number')
        return grouped(exactNumber(earlier, outSpec.formulaUnit))
      if (outSpec && typeof earlier === 'number')
        return grouped(quantityTex(formatExact(earlier, outSpec.kind, locale)))
      return symbol(input)
    }
    const value = values[output]
    const result =
      value === undefined || isRefusal(value)
        ? ''
        : quantityTex(exactText(value, spec.kind, locale))
    return {
      figure: `${use.id}.${output}`,
      tex: `${spec.symbol} = ${put(spec.tex, symbol)}`,
      numbers:
        result === '' ? '' : `${spec.symbol} = ${put(withSigns(spec.tex), number)} = ${result}`,
    }
  })
}

/** A result before rounding: five significant digits in the unit of its kind. */
function exactText(si: number, kind: Parameters<typeof styleOf>[0], locale: Locale): string {
  const style = styleOf(kind, locale.system)
  if (style.form === 'money' || style.form === 'clock') return formatExact(si, kind, locale)
  const unit = style.label ?? style.unit
  return unit === '' ? exactNumber(si, style.unit) : `${exactNumber(si, style.unit)} ${unit}`
}

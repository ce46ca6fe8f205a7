import type { FigureInput, Worksheet } from '../../model/figure.ts'
import { exactNumber, formatExact } from '../../model/quantity/format-exact.ts'
import {
  type Locale,
  spelledUnit,
  styleOf,
  unitText,
} from '../../model/quantity/format-quantity.ts'
import { type Calculation, isRefusal, type OutputSpec, type Refusal } from '../calculation.ts'
import type { Use } from '../uses/use.ts'
import type { Formula } from './formula.ts'
import { formulaTex } from './formula-tex.ts'
import { putNames, putTerms, withProductSigns } from './put-names.ts'
import { quantityFormula } from './quantity-formula.ts'
import { readFormula } from './read-formula.ts'

type Values = Readonly<Record<string, number | Refusal>>

/** A number without its unit, for formulas that say which unit they want. */
const bareNumber = (si: number, unit: string): Formula => quantityFormula(exactNumber(si, unit))

/** The symbol that stands for an input, or for an output named before. */
const symbolsOf =
  ({ inputs, outputs }: Calculation) =>
  (name: string): Formula | undefined => {
    const symbol = inputs[name]?.symbol ?? outputs[name]?.symbol
    return symbol === undefined ? undefined : readFormula(symbol)
  }

/** The number that is put in for an input, or for an output named before. */
function numbersOf(
  calculation: Calculation,
  inputs: readonly FigureInput[],
  values: Values,
  locale: Locale,
): (name: string) => Formula | undefined {
  const given = new Map(inputs.map((i) => [i.name, i]))
  const symbol = symbolsOf(calculation)
  return (name) => {
    const input = given.get(name)
    const unit = calculation.inputs[name]?.formulaUnit
    if (input) return unit === undefined ? quantityFormula(input.text) : bareNumber(input.si, unit)
    const [spec, value] = [calculation.outputs[name], values[name]]
    if (spec === undefined || typeof value !== 'number') return symbol(name)
    return spec.formulaUnit === undefined
      ? quantityFormula(formatExact(value, spec.kind, locale))
      : bareNumber(value, spec.formulaUnit)
  }
}

/**
 * The formula of each output as TeX, once in symbols and once with this facility's numbers and
 * units put in. Numbers keep their units, so the line is a true statement in any system; empirical
 * formulas get bare numbers in the unit they ask for.
 * @param term The word for what stands upright in a formula and is no unit.
 */
export function formulaLines(
  use: Use<string>,
  inputs: readonly FigureInput[],
  values: Values,
  locale: Locale,
  term: (id: string) => string | undefined,
): Worksheet['formulas'] {
  const { calculation } = use
  const symbol = symbolsOf(calculation)
  const number = numbersOf(calculation, inputs, values, locale)
  return Object.entries(calculation.outputs).map(([output, spec]) => {
    const formula = putTerms(readFormula(spec.tex), (id) => term(id) ?? spelledUnit(id, locale))
    const value = values[output]
    const numbers = (): string => formulaTex(putNames(withProductSigns(formula), number))
    return {
      figure: `${use.id}.${output}`,
      tex: `${spec.symbol} = ${formulaTex(putNames(formula, symbol))}`,
      numbers:
        value === undefined || isRefusal(value)
          ? ''
          : [`${spec.symbol} = ${numbers()}`, ...resultsIn(spec, value, locale)].join(' = '),
    }
  })
}

/**
 * A result in the unit that its formula gives, where that is another than the one it is printed in,
 * and in that one.
 */
function resultsIn({ kind, formulaUnit }: OutputSpec, value: number, locale: Locale): string[] {
  const own = formulaUnit === '' ? undefined : formulaUnit
  const style = styleOf(kind, locale.system)
  const texts = [
    ...(own === undefined || own === style.unit
      ? []
      : [
          `${exactNumber(value, own)} ${unitText({ ...style, label: own.replace('m2', 'm²') }, locale)}`,
        ]),
    exactText(value, kind, locale),
  ]
  return texts.map((text) => formulaTex(quantityFormula(text)))
}

/** A result before rounding: four significant digits in the unit of its kind. */
function exactText(si: number, kind: Parameters<typeof styleOf>[0], locale: Locale): string {
  const style = styleOf(kind, locale.system)
  if (style.form === 'money' || style.form === 'clock' || style.form === 'date')
    return formatExact(si, kind, locale)
  const unit = unitText(style, locale)
  return unit === '' ? exactNumber(si, style.unit) : `${exactNumber(si, style.unit)} ${unit}`
}

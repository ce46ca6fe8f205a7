import type { FigureInput, Worksheet } from '../../model/figure.ts'
import { exactNumber, formatExact } from '../../model/quantity/format-exact.ts'
import {
  type Locale,
  spelledUnit,
  styleOf,
  unitText,
} from '../../model/quantity/format-quantity.ts'
import type { Calculation, OutputSpec, Refusal } from '../calculation.ts'
import type { Use } from '../uses/use.ts'
import type { Formula } from './formula.ts'
import { formulaTex } from './formula-tex.ts'
import { namesOf, putNames, putTerms, withProductSigns } from './put-names.ts'
import { quantityFormula } from './quantity-formula.ts'
import { readFormula } from './read-formula.ts'

type Values = Readonly<Record<string, number | Refusal>>

/** The symbol that stands for an input, or for an output named before. */
const symbolsOf =
  ({ inputs, outputs }: Calculation) =>
  (name: string): Formula | undefined => {
    const symbol = inputs[name]?.symbol ?? outputs[name]?.symbol
    return symbol === undefined ? undefined : readFormula(symbol)
  }

/**
 * The number that is put in for an input, or for an output named before, as it is printed; without
 * its unit where the formula says which unit it wants.
 */
function textsOf(
  calculation: Calculation,
  inputs: readonly FigureInput[],
  values: Values,
  locale: Locale,
): (name: string) => string | undefined {
  const given = new Map(inputs.map((i) => [i.name, i]))
  return (name) => {
    const input = given.get(name)
    const unit = calculation.inputs[name]?.formulaUnit
    if (input) return unit === undefined ? input.text : exactNumber(input.si, unit)
    const [spec, value] = [calculation.outputs[name], values[name]]
    if (spec === undefined || typeof value !== 'number') return undefined
    return spec.formulaUnit === undefined
      ? formatExact(value, spec.kind, locale)
      : exactNumber(value, spec.formulaUnit)
  }
}

/** The formula of one output, with its numbers and where they stand. */
function line(
  spec: OutputSpec,
  value: number | Refusal | undefined,
  formula: Formula,
  symbol: (name: string) => Formula | undefined,
  text: (name: string) => string | undefined,
  locale: Locale,
): Omit<Worksheet['formulas'][number], 'figure' | 'symbols'> {
  const signed = withProductSigns(formula)
  const result = (name: string): string => `@${name}`
  const known = typeof value === 'number'
  const numbers = putNames(signed, (name) => {
    const printed = text(name)
    return printed === undefined ? symbol(name) : quantityFormula(printed)
  })
  const results = known ? resultsIn(spec, value, locale) : {}
  const put = namesOf(formula).flatMap((name): [string, string][] => {
    const printed = text(name)
    return printed === undefined ? [] : [[name, printed]]
  })
  return {
    tex: `${spec.symbol} = ${formulaTex(putNames(formula, symbol))}`,
    numbers: known
      ? [
          `${spec.symbol} = ${formulaTex(numbers)}`,
          ...Object.values(results).map((printed) => formulaTex(quantityFormula(printed))),
        ].join(' = ')
      : '',
    places: [
      `${spec.symbol} = ${formulaTex(signed)}`,
      ...resultNames(spec, locale).map(result),
    ].join(' = '),
    put: { ...Object.fromEntries(put), ...results },
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
  const text = textsOf(calculation, inputs, values, locale)
  return Object.entries(calculation.outputs).map(([output, spec]) => {
    const formula = putTerms(readFormula(spec.tex), (id) => term(id) ?? spelledUnit(id, locale))
    const named = namesOf(formula).flatMap((name): [string, string][] => {
      const other = calculation.outputs[name]
      return other ? [[name, other.symbol]] : []
    })
    return {
      figure: `${use.id}.${output}`,
      symbols: Object.fromEntries(named),
      ...line(spec, values[output], formula, symbol, text, locale),
    }
  })
}

/** The unit that a formula gives its result in, where that is another than the printed one. */
function ownUnit({ kind, formulaUnit }: OutputSpec, locale: Locale): string | undefined {
  const own = formulaUnit === '' ? undefined : formulaUnit
  return own === styleOf(kind, locale.system).unit ? undefined : own
}

/** The places of the results in a line; no input or output is called so. */
const resultNames = (spec: OutputSpec, locale: Locale): readonly string[] =>
  ownUnit(spec, locale) === undefined ? ['Result'] : ['OwnResult', 'Result']

/**
 * A result in the unit that its formula gives, where that is another than the one it is printed in,
 * and in that one.
 */
function resultsIn(
  spec: OutputSpec,
  value: number,
  locale: Locale,
): Readonly<Record<string, string>> {
  const own = ownUnit(spec, locale)
  const style = styleOf(spec.kind, locale.system)
  return {
    ...(own !== undefined && {
      OwnResult: `${exactNumber(value, own)} ${unitText({ ...style, label: own.replace('m2', 'm²') }, locale)}`,
    }),
    Result: exactText(value, spec.kind, locale),
  }
}

/** A result before rounding: four significant digits in the unit of its kind. */
function exactText(si: number, kind: Parameters<typeof styleOf>[0], locale: Locale): string {
  const style = styleOf(kind, locale.system)
  if (style.form === 'money' || style.form === 'clock' || style.form === 'date')
    return formatExact(si, kind, locale)
  const unit = unitText(style, locale)
  return unit === '' ? exactNumber(si, style.unit) : `${exactNumber(si, style.unit)} ${unit}`
}

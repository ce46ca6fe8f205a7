import type { Formula, FormulaNode } from '../../../src/compute/formula/formula.ts'
import { formulaTex } from '../../../src/compute/formula/formula-tex.ts'
import { readFormula } from '../../../src/compute/formula/read-formula.ts'
import { toUnit } from '../../../src/model/quantity/format-quantity.ts'

/** What a unit written inside a formula stands for, in SI. */
const units: Readonly<Record<string, number>> = {
  ...Object.fromEntries(
    ['min', 'h', 's', 'day', 'lb', 'in', 'mi', 'mm', 'gal/min'].map((unit) => [
      unit,
      1 / toUnit(1, unit),
    ]),
  ),
  'fl oz': 1 / toUnit(1, 'floz'),
  'µg/m³': 1e-9,
}

const constants: Readonly<Record<string, number>> = {
  '\\pi': Math.PI,
  g: 9.80665,
  '\\rho_{water}': 1000,
  '\\rho_{\\text{water}}': 1000,
}

const functions: Readonly<Record<string, (...values: number[]) => number>> = {
  max: Math.max,
  min: Math.min,
  sin: Math.sin,
  cos: Math.cos,
  tan: Math.tan,
  arctan: Math.atan,
  arccos: Math.acos,
  exp: Math.exp,
  ln: Math.log,
}

/** A formula that names something besides its inputs, such as a sum over readings. */
export class NotClosed extends Error {}

type Values = Readonly<Record<string, number>>
type Row = { readonly nodes: readonly FormulaNode[]; at: number }

const rowOf = (formula: Formula): Row => ({
  nodes: formula.filter((n) => n.kind !== 'space' && n.kind !== 'style'),
  at: 0,
})

const isSign = (node: FormulaNode | undefined, ...signs: readonly string[]): boolean =>
  node?.kind === 'sign' && signs.includes(node.tex)

/** Values between commas. */
function list(formula: Formula, values: Values): number[] {
  const row = rowOf(formula)
  const out = [sum(row, values)]
  while (isSign(row.nodes[row.at], ',')) {
    row.at++
    out.push(sum(row, values))
  }
  if (row.at < row.nodes.length) throw new NotClosed(formulaTex(formula))
  return out
}

const single = (formula: Formula, values: Values): number => {
  const [value, ...more] = list(formula, values)
  if (value === undefined || more.length > 0) throw new NotClosed(formulaTex(formula))
  return value
}

function sum(row: Row, values: Values): number {
  let total = isSign(row.nodes[row.at], '-') ? 0 : product(row, values)
  while (isSign(row.nodes[row.at], '+', '-')) {
    const minus = isSign(row.nodes[row.at++], '-')
    total += (minus ? -1 : 1) * product(row, values)
  }
  return total
}

/** What stands side by side is multiplied. */
function product(row: Row, values: Values): number {
  let total = power(row, values)
  for (;;) {
    const node = row.nodes[row.at]
    if (node === undefined || (node.kind === 'sign' && !isSign(node, '\\cdot', '/'))) return total
    const divides = isSign(node, '/')
    if (node.kind === 'sign') row.at++
    const factor = power(row, values)
    total = divides ? total / factor : total * factor
  }
}

/** The part here with the letters below it, such as `\rho_{water}`, which are part of its name. */
function power(row: Row, values: Values): number {
  const node = row.nodes[row.at++]
  if (node === undefined) throw new NotClosed('ends too early')
  const below = row.nodes[row.at]
  const subscript = below?.kind === 'script' && below.mark !== '^' ? below : undefined
  if (subscript) row.at++
  const base = subscript ? constant(formulaTex([node, subscript])) : factor(node, row, values)
  const above = row.nodes[row.at]
  if (above?.kind !== 'script') return base
  row.at++
  return base ** single(above.of, values)
}

/** A number that was refused leaves the formula open. */
function named(name: string, values: Values): number {
  const value = values[name]
  if (value === undefined) throw new NotClosed(name)
  return value
}

function constant(tex: string): number {
  const value = constants[tex]
  if (value === undefined) throw new NotClosed(tex)
  return value
}

const brackets: Readonly<Record<string, (value: number) => number>> = {
  '\\left\\lceil': (x) => Math.ceil(x - 1e-9),
  '\\left\\lfloor': (x) => Math.floor(x + 1e-9),
  '|': Math.abs,
}

function factor(node: FormulaNode, row: Row, values: Values): number {
  switch (node.kind) {
    case 'number':
      return Number(node.tex)
    case 'name':
      return named(node.name, values)
    case 'letter':
      return constant(node.tex)
    case 'upright': {
      const unit = units[node.tex]
      if (unit === undefined) throw new NotClosed(node.tex)
      return unit
    }
    case 'group':
      return single(node.of, values)
    case 'fraction':
      return single([node.over], values) / single([node.under], values)
    case 'over':
      if (node.command === 'bar') throw new NotClosed('a mean')
      return Math.sqrt(single([node.of], values))
    case 'fenced':
      return (brackets[node.open] ?? ((x: number) => x))(single(node.of, values))
    case 'function':
      return call(node.name, row, values)
    default:
      throw new NotClosed(formulaTex([node]))
  }
}

function call(name: string, row: Row, values: Values): number {
  const apply = functions[name]
  const argument = row.nodes[row.at++]
  if (apply === undefined || argument === undefined) throw new NotClosed(name)
  const given = argument.kind === 'fenced' ? argument.of : [argument]
  return apply(...list(given, values))
}

/**
 * Works a formula out with the numbers given for its names.
 * @throws NotClosed when it names something else.
 */
export const evaluateFormula = (tex: string, values: Values): number =>
  single(readFormula(tex), values)

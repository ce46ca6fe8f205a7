import type { Formula, FormulaNode } from './formula.ts'
import { readFormula } from './read-formula.ts'

const letters: Readonly<Record<string, string>> = {
  '\\pi': 'π',
  '\\theta': 'θ',
  '\\rho': 'ρ',
  '\\varphi': 'φ',
  '\\gamma': 'γ',
  '\\Delta': 'Δ',
  '\\delta': 'δ',
  '\\mu': 'μ',
  '\\alpha': 'α',
  '\\eta': 'η',
  '\\lambda': 'λ',
  '\\omega': 'ω',
  '\\sigma': 'σ',
  '\\ell': 'l',
  '\\dots': '…',
}
const signs: Readonly<Record<string, string>> = { cdot: '×', times: '×', le: '≤', ge: '≥' }
const powers: Readonly<Record<string, string>> = { '2': '²', '3': '³' }
/** Set over the letter before it. */
const bar = '\u0304'

/** Brackets that say nothing but where a whole number is taken. */
const rounding: Readonly<Record<string, string>> = {
  '\\left\\lceil': 'round up ',
  '\\left\\lfloor': 'round down ',
}

/** The parts in a group, or the one part itself. */
const inner = (node: FormulaNode): Formula => (node.kind === 'group' ? node.of : [node])

/** One number, one letter with what hangs at it, or one pair of brackets: needs no others. */
function isOne(formula: Formula): boolean {
  const [first, ...rest] = formula.filter((n) => n.kind !== 'space')
  if (first === undefined) return false
  if (first.kind === 'group' && rest.length === 0) return isOne(first.of)
  if (first.kind === 'function') return rest.length === 1 && rest[0]?.kind === 'fenced'
  if (first.kind === 'fenced') return rest.length === 0 && rounding[first.open] === undefined
  const single =
    first.kind === 'number' ||
    first.kind === 'letter' ||
    (first.kind === 'over' && first.command === 'bar')
  return single && rest.every((n) => n.kind === 'script')
}

/** `1/2`: read as one number wherever it stands. */
const isPlainFraction = (node: FormulaNode): boolean =>
  node.kind === 'fraction' &&
  [node.over, node.under].every((side) => inner(side).every((n) => n.kind === 'number'))

/** Whether a factor follows without a sign, so that it could be read as part of what is below. */
function hasFactorAfter(row: Formula, at: number): boolean {
  const after = row.slice(at + 1).find((n) => n.kind !== 'space' && n.kind !== 'style')
  return after !== undefined && after.kind !== 'sign' && after.kind !== 'script'
}

const bracketed = (formula: Formula): string =>
  isOne(formula) ? rowText(formula) : `(${rowText(formula)})`

function fractionText(node: FormulaNode & { readonly kind: 'fraction' }): string {
  const [over, under] = [inner(node.over), inner(node.under)]
  return `${bracketed(over)}/${bracketed(under)}`
}

function scriptText({ mark, of }: FormulaNode & { readonly kind: 'script' }): string {
  if (mark === "'") return '′'
  const script = of.flatMap(inner)
  const text = rowText(script)
  if (mark === '^') return powers[text] ?? `^${isOne(script) ? text : `(${text})`}`
  const close = text.replaceAll(' ', '')
  const isSum = script.length > 1 && script.some((n) => n.kind === 'sign' && n.tex !== ',')
  return isSum ? `_(${close})` : `_${close}`
}

function nodeText(node: FormulaNode): string {
  switch (node.kind) {
    case 'name':
      return node.name
    case 'number':
      return node.tex.replaceAll('{,}', ',')
    case 'letter':
      return letters[node.tex] ?? node.tex
    case 'upright':
      return node.tex.replace(/\\(.)/g, '$1')
    case 'sign':
      return signs[node.tex.trim().slice(1)] === undefined
        ? node.tex
        : ` ${signs[node.tex.trim().slice(1)]} `
    case 'space':
      return ' '
    case 'style':
      return ''
    case 'function':
      return node.name === 'sum' ? 'Σ' : node.name
    case 'group':
      return rowText(node.of)
    case 'script':
      return scriptText(node)
    case 'fraction':
      return fractionText(node)
    case 'over':
      return node.command === 'sqrt'
        ? `√(${rowText(inner(node.of))})`
        : `${rowText(inner(node.of))}${bar}`
    case 'fenced':
      return fencedText(node)
  }
}

function fencedText({ open, of }: FormulaNode & { readonly kind: 'fenced' }): string {
  const rounded = rounding[open]
  if (rounded !== undefined) return `${rounded}(${rowText(of)})`
  if (open.endsWith('[')) return `[${rowText(of)}]`
  return open === '|' ? `|${rowText(of)}|` : `(${rowText(of)})`
}

/** Whether two parts side by side need room between them to be read as two. */
function apart(before: FormulaNode | undefined, after: FormulaNode, text: string): boolean {
  if (before === undefined || /^[\s)\],/²³^_]/.test(text)) return false
  if (after.kind === 'script' || before.kind === 'style') return false
  if (before.kind === 'function') return !text.startsWith('(')
  if (before.kind === 'number' && after.kind === 'fraction') return true
  return (
    before.kind === 'fraction' ||
    after.kind === 'function' ||
    (before.kind === 'script' && after.kind !== 'sign') ||
    (after.kind === 'fraction' && before.kind !== 'sign') ||
    (after.kind === 'fenced' && rounding[after.open] !== undefined)
  )
}

function rowText(row: Formula): string {
  let text = ''
  for (const [i, node] of row.entries()) {
    const part = nodeText(node)
    // A function takes one part without brackets; in plain text it needs them.
    const bare =
      node.kind === 'fraction' &&
      (row[i - 1]?.kind === 'function' || (hasFactorAfter(row, i) && !isPlainFraction(node)))
    const shown = bare ? `(${part})` : part
    text += apart(row[i - 1], node, shown) && !/\s$/.test(text) ? ` ${shown}` : shown
  }
  return text.replace(/\s+/g, ' ').trim()
}

/**
 * A formula for the terminal: fractions as (a)/(b), Greek letters and signs as such.
 * @param tex Formula or symbol of a worksheet.
 * @throws SyntaxError when it cannot be read.
 */
export const formulaText = (tex: string): string => rowText(readFormula(tex))

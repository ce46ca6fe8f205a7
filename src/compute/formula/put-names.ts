import type { Formula, FormulaNode } from './formula.ts'

/** The same formula with each row of parts changed, from the inside out. */
function changeRows(formula: Formula, change: (row: Formula) => Formula): Formula {
  const inside = (node: FormulaNode): FormulaNode => {
    switch (node.kind) {
      case 'group':
      case 'script':
      case 'fenced':
        return { ...node, of: changeRows(node.of, change) }
      case 'over':
        return { ...node, of: one(node.of) }
      case 'fraction':
        return { ...node, over: one(node.over), under: one(node.under) }
      default:
        return node
    }
  }
  const one = (node: FormulaNode): FormulaNode => {
    const [changed, ...more] = changeRows([node], change)
    return changed !== undefined && more.length === 0
      ? changed
      : { kind: 'group', of: changeRows([node], change) }
  }
  return change(formula.map(inside))
}

/** Puts what stands for each `@name` in its place, held together by a group. */
export const putNames = (
  formula: Formula,
  standsFor: (name: string) => Formula | undefined,
): Formula =>
  changeRows(formula, (row) =>
    row.map((node) => {
      const put = node.kind === 'name' ? standsFor(node.name) : undefined
      return put === undefined ? node : { kind: 'group', of: put }
    }),
  )

/** Puts the words of a language in the place of the ids that stand for them. */
export const putTerms = (formula: Formula, term: (id: string) => string | undefined): Formula =>
  changeRows(formula, (row) =>
    row.map((node) => {
      const word = node.kind === 'upright' ? term(node.tex) : undefined
      return word === undefined ? node : { kind: 'upright', tex: word.replace(/[%$]/g, '\\$&') }
    }),
  )

const product: FormulaNode = { kind: 'sign', tex: ' \\cdot ' }

/** Whether a part begins with a bracket or a command, so that it multiplies the name before it. */
const multiplies = (node: FormulaNode | undefined): boolean =>
  node !== undefined &&
  (['fraction', 'over', 'upright', 'function', 'style'].includes(node.kind) ||
    (node.kind === 'fenced' && /^[\\(]/.test(node.open)) ||
    ('tex' in node && node.tex.startsWith('\\')))

/**
 * Symbols stand side by side for a product; numbers need the sign. A thin space after a comma only
 * parts a list.
 */
export const withProductSigns = (formula: Formula): Formula =>
  changeRows(formula, (row) =>
    row.map((node, i) => {
      if (node.kind !== 'space' || node.tex !== '\\,') return node
      const [before, after] = [row[i - 1], row[i + 1]]
      const afterComma = before?.kind === 'sign' && before.tex === ','
      if (after?.kind === 'name') return afterComma ? node : product
      return before?.kind === 'name' && multiplies(after) ? product : node
    }),
  )

/** The names that a formula holds, each as often as it stands there. */
export function namesOf(formula: Formula): readonly string[] {
  const names: string[] = []
  putNames(formula, (name) => {
    names.push(name)
    return undefined
  })
  return names
}

import type { Formula, FormulaNode } from './formula.ts'

function nodeTex(node: FormulaNode): string {
  switch (node.kind) {
    case 'name':
      return `@${node.name}`
    case 'upright':
      return `\\text{${node.tex}}`
    case 'function':
      return `\\${node.name}`
    case 'group':
      return `{${formulaTex(node.of)}}`
    case 'script':
      return `${node.mark}${formulaTex(node.of)}`
    case 'fraction':
      return `\\${node.command}${nodeTex(node.over)}${nodeTex(node.under)}`
    case 'over':
      return `\\${node.command}${node.gap}${nodeTex(node.of)}`
    case 'fenced':
      return `${node.open}${formulaTex(node.of)}${node.close}`
    default:
      return node.tex
  }
}

/** A formula as TeX; one that was read comes out as it went in. */
export const formulaTex = (formula: Formula): string => formula.map(nodeTex).join('')

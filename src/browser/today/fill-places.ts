import type { Formula, FormulaNode } from '../../compute/formula/formula.ts'
import { quantityFormula } from '../../compute/formula/quantity-formula.ts'
import { escapeHtml } from '../../render/text/escape-html.ts'

/** TeX of a single mark as text: `\%`, `{,}`; its spaces hold it together. */
const plain = (tex: string): string =>
  escapeHtml(tex.replaceAll('{,}', ',').replace(/\\(.)/g, '$1')).replaceAll(' ', '\u00a0')

function nodeMath(node: FormulaNode): string {
  switch (node.kind) {
    case 'upright':
      return `<mtext>${plain(node.tex)}</mtext>`
    case 'number':
      return `<mn>${plain(node.tex)}</mn>`
    case 'sign':
      return '<mo form="prefix" stretchy="false">−</mo>'
    case 'space':
      return '<mspace width="0.1667em"></mspace>'
    case 'group':
      return quantityMath(node.of)
    case 'fraction':
      return `<mstyle displaystyle="false" scriptlevel="0"><mfrac>${nodeMath(node.over)}${nodeMath(node.under)}</mfrac></mstyle>`
    default:
      throw new RangeError(`no printed quantity holds a ${node.kind}`)
  }
}

/** A printed quantity as MathML; of formulas it is all that a page sets by itself. */
const quantityMath = (formula: Formula): string => formula.map(nodeMath).join('')

/**
 * Puts numbers into a formula.
 * @param places MathML in which elements of the class `n-<name>` stand for numbers.
 * @param numbers Printed quantities by name.
 * @param symbols MathML of what stands there where there is no number.
 */
export const fillPlaces = (
  places: string,
  numbers: Readonly<Record<string, string>>,
  symbols: Readonly<Record<string, string>>,
): string =>
  places.replace(/<mtext class="n-([^"]+)">0<\/mtext>/g, (_, name: string) => {
    const number = numbers[name]
    return `<mrow>${number === undefined ? (symbols[name] ?? '') : quantityMath(quantityFormula(number))}</mrow>`
  })

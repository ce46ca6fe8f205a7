import type { Formula, FormulaNode } from './formula.ts'

const upright = (text: string): FormulaNode => ({
  kind: 'upright',
  tex: text.replace(/[%$]/g, '\\$&'),
})

const digits = (text: string): FormulaNode => ({ kind: 'number', tex: text.replaceAll(',', '{,}') })

const group = (text: string): FormulaNode => ({ kind: 'group', of: [digits(text)] })

const minus: FormulaNode = { kind: 'sign', tex: '-' }

/** Sign, whole number, fraction, unit; only the fraction is always there. */
const fractional =
  /^(?<minus>[−-])?(?:(?<whole>[\d,]+)\s)?(?<over>\d+)\/(?<under>\d+)(?:\s+(?<unit>.*))?$/u
/** Sign, currency, number, unit. */
const plain = /^(?<minus>[−-])?(?<money>[A-Z]*[$€£])?(?<whole>[\d,]+(?:\.\d+)?)\s*(?<unit>.*)$/u

/**
 * A printed quantity as part of a formula: `2 1/4 in` and `25 %` as the number, then its unit
 * upright; a time of day, `13:00` or `1:00 PM`, and a date as they are.
 * @throws RangeError when it is no printed quantity.
 */
export function quantityFormula(text: string): Formula {
  if (/^(\d+:\d\d( [AP]M)?|\d{4}-\d\d-\d\d)$/.test(text)) return [upright(text)]
  const read = (fractional.exec(text) ?? plain.exec(text))?.groups
  if (!read) throw new RangeError(`"${text}" is no printed quantity`)
  return [
    ...(read['minus'] ? [minus] : []),
    ...(read['money'] ? [upright(read['money'])] : []),
    ...(read['whole'] ? [digits(read['whole'])] : []),
    ...(read['over'] ? [fraction(read['over'], read['under'] ?? '')] : []),
    ...unitAfter(read['unit']),
  ]
}

const fraction = (over: string, under: string): FormulaNode => ({
  kind: 'fraction',
  command: 'tfrac',
  over: group(over),
  under: group(under),
})

const unitAfter = (unit: string | undefined): Formula =>
  unit ? [{ kind: 'space', tex: '\\,' }, upright(unit)] : []

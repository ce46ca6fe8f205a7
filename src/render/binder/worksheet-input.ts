import { type Figure, type FigureInput, isEstimated } from '../../model/figure.ts'
import { fill } from '../../model/pattern.ts'
import { formulaHtml } from '../text/formula.ts'
import { type Html, html } from '../text/html.ts'
import { quantityHtml } from '../text/number-html.ts'
import type { Pen } from '../views/pen.ts'
import { provenanceWords } from '../views/provenance-words.ts'
import { worksheetBehind } from '../views/worksheet-view.ts'

/** A value as it is put into formulas. */
export type InputView = {
  readonly symbol: Html
  readonly value: Html
  readonly label: string
  readonly origin: string
  readonly href: string
  readonly typical: boolean
}

/** Usual values are many, and what they are is said in front of all. */
function shortOrigin({ provenance }: FigureInput, pen: Pen): string {
  const { words } = pen
  if (provenance.kind !== 'typical') return provenanceWords(provenance, pen)
  const { note } = provenance
  return note === '' ? words.worksheet.usual : fill(words.worksheet.usualAs, { note })
}

/** A value with where it comes from: a worksheet by its number alone. */
export function inputView(i: FigureInput, pen: Pen): InputView {
  const worksheet = worksheetBehind(i, pen)
  return {
    symbol: formulaHtml(i.symbol, i.label),
    value: html(quantityHtml(i.text)),
    label: i.label,
    origin: worksheet ? worksheet.number : shortOrigin(i, pen),
    href: (worksheet && pen.context.worksheetHref(worksheet.id)) ?? '',
    typical: isEstimated(i.provenance),
  }
}

/** How a result was rounded, where that is not to the nearest; by how much can be seen. */
export function roundingWords({ value }: Figure, { words }: Pen): string {
  if (!value.ok || value.rounding.mode === 'nearest') return ''
  return value.rounding.mode === 'up' ? words.worksheet.up : words.worksheet.down
}

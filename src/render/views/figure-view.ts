import type { NamedQuantity } from '../../model/manual/named-quantity.ts'
import { escapeHtml } from '../text/escape-html.ts'
import type { Html } from '../text/html.ts'
import { html } from '../text/html.ts'
import { largeNumberHtml } from '../text/number-html.ts'
import type { Pen } from './pen.ts'

/**
 * A quantity set large: number, unit beside it, what it is below, where it comes from in soft ink.
 */
export type FigureView = {
  readonly number: Html
  readonly unit: string
  readonly label: Html
  readonly known: boolean
  readonly reason: string
  readonly estimate: boolean
  readonly measure: string
  readonly worksheet: string
  readonly href: string
  /** Its name, where a page can work it out anew. */
  readonly live: string
}

function view(q: NamedQuantity, label: Html, pen: Pen): FigureView {
  return {
    number: html(largeNumberHtml(q.number)),
    unit: q.unit,
    label,
    known: q.ok,
    reason: q.reason,
    estimate: q.estimate,
    measure: q.toMeasure.join('; '),
    worksheet: q.worksheet?.number ?? '',
    href: (q.worksheet && pen.context.worksheetHref(q.worksheet.id)) ?? '',
    live: pen.context.live?.has(q.name) ? q.name : '',
  }
}

/** A quantity by name, under the manual's own label or one of the author's. */
export function figureView(name: string, pen: Pen, label?: string): FigureView {
  const q = pen.manual.quantities[name]
  if (!q) throw new RangeError(`the manual does not hold ${name}`)
  return view(q, label === undefined ? html(escapeHtml(q.label)) : pen.line(label), pen)
}

import type { ManualReckoner } from '../../model/manual/reckoner.ts'
import { type Html, html } from '../text/html.ts'
import { quantityHtml } from '../text/number-html.ts'
import { isNarrow } from './narrow-table.ts'
import type { Pen } from './pen.ts'

export type ReckonerView = {
  readonly id: string
  /** Where it is found in a binder, such as `12.3`; elsewhere empty. */
  readonly number: string
  readonly title: Html
  readonly about: Html
  readonly rowHead: string
  readonly columnsHead: string
  readonly columnHeads: readonly Html[]
  readonly span: number
  readonly rows: readonly {
    readonly head: Html
    readonly own: boolean
    readonly cells: readonly Html[]
  }[]
  readonly worksheet: string
  readonly href: string
  readonly estimate: boolean
  /** Two of them have room side by side on a page. */
  readonly narrow: boolean
  /** How it is worked out, where a page can do it anew; else empty. */
  readonly live: string
}

const quantity = (text: string): Html => html(quantityHtml(text))

function liveReckoner({ id }: ManualReckoner, { manual }: Pen): string {
  const found = manual.today.reckoners.find((r) => r.id === id)
  return found ? JSON.stringify(found) : ''
}

/** Whether it is read as well at half a page's width; the own row says that it is. */
function hasHalf({ rowHead, columnHeads, rows }: ManualReckoner, { plain, words }: Pen): boolean {
  const shown = rows.map(({ head, own, cells }) => [
    own ? `${head} ${words.reckoner.own}` : head,
    ...cells,
  ])
  return isNarrow([rowHead, ...columnHeads.map(plain)], shown)
}

export const reckonerView = (r: ManualReckoner, pen: Pen, number = ''): ReckonerView => ({
  id: r.id,
  number,
  title: pen.line(r.title),
  about: pen.line(r.about),
  rowHead: r.rowHead,
  columnsHead: r.columnsHead ?? '',
  columnHeads: r.columnHeads.map((h) => (r.columnsHead === undefined ? pen.line(h) : quantity(h))),
  span: r.columnHeads.length,
  rows: r.rows.map((row) => ({
    head: quantity(row.head),
    own: row.own,
    cells: row.cells.map(quantity),
  })),
  worksheet: r.worksheet.number,
  href: pen.context.worksheetHref(r.worksheet.id) ?? '',
  estimate: r.estimate,
  narrow: hasHalf(r, pen),
  live: pen.context.live ? liveReckoner(r, pen) : '',
})

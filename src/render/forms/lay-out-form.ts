import type { ManualForm } from '../../model/manual/form.ts'
import { heights } from './form-sizes.ts'

export type RowPlan = { readonly head: string; readonly write: 'line' | 'check' | undefined }

/**
 * One page of a form: the rows of its table, counted through all pages, and what stands only at the
 * beginning or the end.
 */
export type FormPage = {
  readonly from: number
  readonly rows: readonly RowPlan[]
  readonly first: boolean
  readonly last: boolean
}

export type Measures = {
  /**
   * Title, words and boxes on the first page; title and words on the others; head of the table;
   * boxes and signatures on the last page, mm.
   */
  readonly first: number
  readonly again: number
  readonly head: number
  readonly last: number
  readonly rowHeight: (row: RowPlan) => number
}

type Table = NonNullable<ManualForm['table']>

const blank: RowPlan = { head: '', write: undefined }

const heightOf = (rows: readonly RowPlan[], m: Measures): number =>
  rows.reduce((sum, row) => sum + m.rowHeight(row), 0)

/** How many blank rows the last page has room for below the rows that must stand on it. */
function blankRows(table: Table, rows: readonly RowPlan[], free: number, m: Measures): number {
  if (table.spare === 0) return 0
  const height = heightOf(rows, m)
  const pitch = table.rows.length > table.spare ? heights.roomy : heights.hand
  return Math.max(
    0,
    Math.min(Math.floor((free - height) / heights.hand), Math.floor(free / pitch) - rows.length),
  )
}

/** How many rows fit; one is kept back, so that the signatures never stand on a page alone. */
function rowsThatFit(rows: readonly RowPlan[], free: number, m: Measures): number {
  let used = 0
  const over = rows.slice(0, -1).findIndex((row) => {
    used += m.rowHeight(row)
    return used > free
  })
  return over < 0 ? rows.length - 1 : over
}

/**
 * The rows of this page where only blank ones would be carried over: below rows that stand ready
 * they are spare, and the next page begins with the places to write behind the table.
 */
function withoutSpare(
  { table, after }: ManualForm,
  rest: readonly RowPlan[],
  free: number,
  m: Measures,
): readonly RowPlan[] | undefined {
  if (!table || table.rows.length === 0 || after.length === 0) return undefined
  let used = 0
  const fit = rest.filter((row) => {
    used += m.rowHeight(row)
    return used <= free
  })
  return rest.slice(fit.length).every((row) => row.head === '') ? fit : undefined
}

/**
 * Shares the rows of a form among as many pages as they need; the last page is filled with blank
 * rows.
 * @param room Height of what is written on, mm.
 * @throws RangeError when not even one row fits beside what must stand on the page.
 */
export function layOutForm(form: ManualForm, room: number, m: Measures): readonly FormPage[] {
  const { table } = form
  if (!table) return [{ from: 0, rows: [], first: true, last: true }]
  const wanted: RowPlan[] = [...table.rows, ...Array.from({ length: table.spare }, () => blank)]
  const pages: FormPage[] = []
  let from = 0
  for (;;) {
    const first = pages.length === 0
    const free = room - (first ? m.first : m.again) - m.head
    const rest = wanted.slice(from)
    if (heightOf(rest, m) + m.last <= free) {
      const more = blankRows(table, rest, free - m.last, m)
      const rows = [...rest, ...Array.from({ length: more }, () => blank)]
      return [...pages, { from, rows, first, last: true }]
    }
    const few = withoutSpare(form, rest, free, m)
    if (few && m.again + m.last <= room)
      return [
        ...pages,
        { from, rows: few, first, last: false },
        { from: from + few.length, rows: [], first: false, last: true },
      ]
    const taken = rowsThatFit(rest, free, m)
    if (taken < 1) throw new RangeError(`the form "${form.id}" leaves no room for a row`)
    pages.push({ from, rows: rest.slice(0, taken), first, last: false })
    from += taken
  }
}

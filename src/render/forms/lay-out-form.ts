import type { FormBox, ManualForm } from '../../model/manual.ts'

/** Paper and what of it is written on, mm; the style sheet of forms is given the same numbers. */
export const sheet = {
  letter: { width: 215.9, height: 279.4 },
  a4: { width: 210, height: 297 },
  margin: { top: 14, bottom: 12, bound: 24, outer: 14 },
} as const

/**
 * Heights, mm. A row for handwriting is never lower than `hand`; where most rows stand ready, blank
 * ones are added only while all stay `roomy`.
 */
export const heights = {
  hand: 8.6,
  roomy: 12.5,
  title: 4.6,
  titleLine: 8.6,
  line: 4.2,
  tick: 5.8,
  boxGap: 2,
  tableGap: 2.5,
  headLine: 3.9,
  readyLine: 4,
  sign: 15,
} as const

/**
 * Width of a letter against the height of the type, on the wide side: a guess that is too small
 * would run off the page.
 */
const letter = 0.5
const mmOf = (points: number): number => (points * 25.4) / 72

/** Lines that a text takes at most in a column. */
export const linesIn = (text: string, width: number, points: number): number => {
  const perLine = Math.max(1, Math.floor(width / (letter * mmOf(points))))
  const longest = Math.max(...text.split(/\s+/).map((w) => w.length), 1)
  return Math.max(Math.ceil((text.length * 1.08) / perLine), Math.ceil(longest / perLine))
}

export type Paper = 'letter' | 'a4'

export const textWidth = (paper: Paper): number =>
  sheet[paper].width - sheet.margin.bound - sheet.margin.outer

/** Height of boxes that follow each other in rows of six sixths, mm. */
export function boxesHeight(boxes: readonly FormBox[], m: BoxMeasures): number {
  let [used, row, total] = [0, 0, 0]
  for (const b of boxes) {
    if (used + b.wide > 6) {
      total += row + heights.boxGap
      used = 0
      row = 0
    }
    used += b.wide
    row = Math.max(row, boxHeight(b, m))
  }
  return boxes.length === 0 ? 0 : total + row + heights.tableGap
}

/** Lines that ticks with their words take, side by side. */
function tickLines(choices: readonly string[], width: number, points: number): number {
  let [lines, used] = [1, 0]
  for (const c of choices) {
    const wide = 10 + c.length * letter * mmOf(points)
    if (used > 0 && used + wide > width) {
      lines += 1
      used = 0
    }
    used += wide
  }
  return lines
}

/** A box as high as its lines of handwriting, or as its ticks. */
export function boxHeight(b: FormBox, m: BoxMeasures): number {
  const width = (m.width * b.wide) / 6 - 5
  const label = linesIn(m.plain(b.label), width, m.label) * heights.readyLine + 0.8
  return (
    label +
    (b.choices.length > 0
      ? Math.max(heights.hand - 1, tickLines(b.choices.map(m.plain), width, m.text) * heights.tick)
      : b.tall * 8.2)
  )
}

/**
 * What boxes are measured with: width of the page's text, mm, sizes of type, points, and the words
 * of a text.
 */
export type BoxMeasures = {
  readonly width: number
  readonly label: number
  readonly text: number
  readonly plain: (text: string) => string
}

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

const blank: RowPlan = { head: '', write: undefined }

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
    const height = rest.reduce((sum, r) => sum + m.rowHeight(r), 0)
    if (height + m.last <= free) {
      const pitch = table.rows.length > table.spare ? heights.roomy : heights.hand
      const more =
        table.spare === 0
          ? 0
          : Math.max(
              0,
              Math.min(
                Math.floor((free - m.last - height) / heights.hand),
                Math.floor((free - m.last) / pitch) - rest.length,
              ),
            )
      return [
        ...pages,
        { from, rows: [...rest, ...Array.from({ length: more }, () => blank)], first, last: true },
      ]
    }
    let [used, taken] = [0, 0]
    // One row is kept back, so that the signatures never stand on a page alone.
    for (const row of rest.slice(0, -1)) {
      used += m.rowHeight(row)
      if (used > free) break
      taken += 1
    }
    if (taken === 0) throw new RangeError(`the form "${form.id}" leaves no room for a row`)
    pages.push({ from, rows: rest.slice(0, taken), first, last: false })
    from += taken
  }
}

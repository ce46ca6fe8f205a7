import type { ManualForm } from '../../model/manual/form.ts'
import type { Pen } from '../views/pen.ts'
import { columnsOf, shareOf } from './form-columns.ts'
import { boxesHeight, heights, linesIn, type } from './form-sizes.ts'
import type { Measures } from './lay-out-form.ts'

/** Title, who, when, where kept, and what it is for: what stands at the top of every page. */
function topHeight(form: ManualForm, width: number, { words, plain }: Pen): number {
  const { who, moment, kept } = words.forms
  const use = [who, form.who, moment, form.moment, kept, form.kept].map(plain).join('  ')
  return (
    heights.title +
    heights.titleLine * linesIn(plain(form.title), width - 48, type.title) +
    heights.line * (linesIn(use, width, type.use) + linesIn(plain(form.about), width, type.about)) +
    3
  )
}

/**
 * Heights of the parts of a form, judged by their words; see {@link Measures}.
 * @param width Room for what is written, mm.
 */
export function measureForm(form: ManualForm, width: number, pen: Pen): Measures {
  const { plain } = pen
  const columns = columnsOf(form)
  const [first] = columns
  const textWidth = (part: number): number => part * width - 3
  const headLines = columns.map((c) =>
    linesIn(plain(c.head), textWidth(shareOf(c, columns)), type.head),
  )
  const readyWidth = first ? textWidth(shareOf(first, columns)) : width
  const top = topHeight(form, width, pen)
  return {
    first: top + boxesHeight(form.boxes, { width, plain }),
    again: top,
    head: heights.tableGap + 1.5 + heights.headLine * Math.max(1, ...headLines),
    last: boxesHeight(form.after, { width, plain }) + heights.sign,
    rowHeight: (row) =>
      Math.max(heights.hand, 1.2 + heights.readyLine * linesIn(row.head, readyWidth, type.ready)),
  }
}

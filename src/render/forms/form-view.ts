import type { FormBox, FormWrite, ManualForm } from '../../model/manual/form.ts'
import type { Paper } from '../../model/papers.ts'
import { fill } from '../../model/pattern.ts'
import type { Pen } from '../views/pen.ts'
import { fieldNames, slug } from './field-names.ts'
import { columnsOf, shareOf } from './form-columns.ts'
import { boxHeight, formRoom } from './form-sizes.ts'
import { type FormPage, layOutForm, type RowPlan } from './lay-out-form.ts'
import { measureForm } from './measure-form.ts'

/** Boxes with the names of their fields, each name once in the form. */
function boxViews({ id, title }: ManualForm, width: number, pen: Pen) {
  const { line, plain } = pen
  const name = fieldNames()
  return (b: FormBox) => {
    const label = plain(b.label)
    const field = `${id}.${name(label)}`
    return {
      label: line(b.label),
      wide: b.wide,
      tall: b.tall,
      height: boxHeight(b, { width, plain }).toFixed(1),
      field,
      tip: `${plain(title)}: ${label}`,
      choices: b.choices.map((c) => ({
        text: line(c),
        field: `${field}.${slug(plain(c))}`,
        tip: `${plain(title)}: ${label}, ${plain(c)}`,
      })),
      ticks: b.choices.length > 0,
    }
  }
}

const columnViews = (form: ManualForm, pen: Pen) => {
  const columns = columnsOf(form)
  return columns.map((c) => ({
    head: pen.line(c.head),
    percent: (shareOf(c, columns) * 100).toFixed(2),
    check: c.write === 'check',
  }))
}

/** Rows of the table; what stands ready in the first column is not written in. */
function rowViews(form: ManualForm, pen: Pen) {
  const title = pen.plain(form.title)
  const name = fieldNames()
  const columns = columnsOf(form).map((c) => {
    const head = pen.plain(c.head)
    return { write: c.write, head, name: name(head) }
  })
  return (r: RowPlan, i: number) => ({
    ready: r.head,
    cells: columns.slice(r.head === '' ? 0 : 1).map((c) => {
      const kind: FormWrite = r.write ?? c.write
      const row = r.head === '' ? `${pen.words.forms.row} ${i + 1}` : r.head
      return {
        check: kind === 'check',
        field: `${form.id}.row-${i + 1}.${c.name}`,
        tip: `${title}: ${c.head}, ${row}`,
      }
    }),
  })
}

/** A line to sign on, or to type a name on. */
function signature({ id, title }: ManualForm, pen: Pen) {
  const name = fieldNames()
  return (s: ManualForm['sign'][number]) => {
    const label = pen.plain(s)
    return {
      label: pen.line(s),
      field: `${id}.sign-${name(label)}`,
      tip: `${pen.plain(title)}: ${fill(pen.words.forms.signature, { who: label })}`,
    }
  }
}

const pageWords = (pages: readonly FormPage[], n: number, { words }: Pen): string =>
  pages.length > 1 ? fill(words.forms.page, { page: n + 1, pages: pages.length }) : ''

/** The pages of a form. */
export function formView(form: ManualForm, paper: Paper, pen: Pen) {
  const { width, height } = formRoom(paper)
  const box = boxViews(form, width, pen)
  const row = rowViews(form, pen)
  // Names are given in this order, whatever page a box stands on.
  const [boxes, after] = [form.boxes.map(box), form.after.map(box)]
  const sign = form.sign.map(signature(form, pen))
  const pages = layOutForm(form, height, measureForm(form, width, pen))
  return pages.map((page, n) => ({
    id: n === 0 ? form.id : `${form.id}-${n + 1}`,
    title: pen.line(form.title),
    page: pageWords(pages, n, pen),
    about: pen.line(form.about),
    who: pen.line(form.who),
    moment: pen.line(form.moment),
    kept: pen.line(form.kept),
    boxes: page.first ? boxes : [],
    // What stands ready is all: the places below the table take the rest of the page, else the rows
    // share it.
    closed: form.table?.spare === 0,
    columns: columnViews(form, pen),
    rows: page.rows.map((r, i) => row(r, page.from + i)),
    after: page.last ? after : [],
    sign: page.last ? sign : [],
  }))
}

import type { FormBox, FormWrite, Manual, ManualForm } from '../../model/manual.ts'
import { fill } from '../../model/pattern.ts'
import type { RenderAssets } from '../assets.ts'
import { createTemplates } from '../text/templates.ts'
import { createPen, type Pen } from '../views/pen.ts'
import {
  boxesHeight,
  boxHeight,
  heights,
  layOutForm,
  linesIn,
  type Paper,
  type RowPlan,
  sheet,
  textWidth,
} from './lay-out-form.ts'

const slug = (label: string): string =>
  label
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '')

/**
 * Sizes of type, points, as in the style sheet; the title's letters are narrower than those of
 * text.
 */
const type = { title: 18.7, use: 9, about: 9.6, label: 8.4, head: 8.6, ready: 9.4 } as const

/** Names of places to write, each once in a form. */
function namer(form: string): (label: string) => string {
  const seen = new Map<string, number>()
  return (label) => {
    const name = `${form}.${slug(label) || 'place'}`
    const times = (seen.get(name) ?? 0) + 1
    seen.set(name, times)
    return times === 1 ? name : `${name}-${times}`
  }
}

type Column = NonNullable<ManualForm['table']>['columns'][number]

function formView(form: ManualForm, paper: Paper, pen: Pen) {
  const { words } = pen
  const width = textWidth(paper)
  const title = pen.plain(form.title)
  const name = namer(form.id)
  const measures = { width, label: type.label, text: type.about, plain: pen.plain }
  const box = (b: FormBox) => {
    const label = pen.plain(b.label)
    const field = name(label)
    return {
      label: pen.line(b.label),
      wide: b.wide,
      tall: b.tall,
      height: boxHeight(b, measures).toFixed(1),
      field,
      tip: `${title}: ${label}`,
      choices: b.choices.map((c) => ({
        text: pen.line(c),
        field: `${field}.${slug(pen.plain(c))}`,
        tip: `${title}: ${label}, ${pen.plain(c)}`,
      })),
      ticks: b.choices.length > 0,
    }
  }
  const [boxes, after] = [form.boxes.map(box), form.after.map(box)]
  const columns: readonly Column[] = form.table?.columns ?? []
  const all = columns.reduce((sum, c) => sum + c.wide, 0)
  const share = (c: Column | undefined): number => ((c?.wide ?? 1) / all) * width - 3
  const write = [
    words.forms.who,
    form.who,
    words.forms.moment,
    form.moment,
    words.forms.kept,
    form.kept,
  ]
    .map((t) => pen.plain(t))
    .join('  ')
  const top =
    heights.title +
    heights.titleLine * linesIn(title, width - 48, type.title) +
    heights.line *
      (linesIn(write, width, type.use) + linesIn(pen.plain(form.about), width, type.about)) +
    3
  const tableGap = heights.tableGap
  const pages = layOutForm(form, sheet[paper].height - sheet.margin.top - sheet.margin.bottom, {
    first: top + boxesHeight(form.boxes, measures),
    again: top,
    head:
      tableGap +
      1.5 +
      heights.headLine *
        Math.max(1, ...columns.map((c) => linesIn(pen.plain(c.head), share(c), type.head))),
    last: boxesHeight(form.after, measures) + heights.sign,
    rowHeight: (row) =>
      Math.max(
        heights.hand,
        1.2 + heights.readyLine * linesIn(row.head, share(columns[0]), type.ready),
      ),
  })
  const heads = columns.map((c) => pen.plain(c.head))
  const columnNames = heads.map(namer('').bind(undefined)).map((n) => n.slice(1))
  const row = (r: RowPlan, i: number) => ({
    ready: r.head,
    // Where the first column is ready it is not written in.
    cells: columns
      .map((c, j) => ({ c, j }))
      .slice(r.head === '' ? 0 : 1)
      .map(({ c, j }) => {
        const kind: FormWrite = r.write ?? c.write
        return {
          check: kind === 'check',
          field: `${form.id}.row-${i + 1}.${columnNames[j] ?? ''}`,
          tip: `${title}: ${heads[j] ?? ''}, ${r.head === '' ? `${words.forms.row} ${i + 1}` : r.head}`,
        }
      }),
  })
  return pages.map((page, n) => ({
    id: n === 0 ? form.id : `${form.id}-${n + 1}`,
    title: pen.line(form.title),
    page: pages.length > 1 ? fill(words.forms.page, { page: n + 1, pages: pages.length }) : '',
    about: pen.line(form.about),
    who: pen.line(form.who),
    moment: pen.line(form.moment),
    kept: pen.line(form.kept),
    boxes: page.first ? boxes : [],
    hasTable: form.table !== undefined,
    // What stands ready is all: the places below the table take the rest of the page, else the rows
    // share it.
    closed: form.table?.spare === 0,
    columns: columns.map((c) => ({
      head: pen.line(c.head),
      percent: ((c.wide / all) * 100).toFixed(2),
      check: c.write === 'check',
    })),
    rows: page.rows.map((r, i) => row(r, page.from + i)),
    after: page.last ? after : [],
    sign: page.last ? form.sign.map((s) => pen.line(s)) : [],
  }))
}

/**
 * All forms in one document; a section `.form` is exactly one page. Every `data-field` becomes a
 * field of the PDF: its name, with `data-tip` what is read out for it, and `data-kind` what it is:
 * `text` with so many `data-lines`, or `check`, a square that is ticked.
 */
export function renderForms(
  manual: Manual,
  assets: RenderAssets,
): { readonly css: string; readonly body: string } {
  const pen = createPen(manual, assets.words, 'paper', {
    worksheetHref: () => undefined,
    procedureHref: () => undefined,
  })
  const { paper } = manual.facility
  const { width, height } = sheet[paper]
  const { top, bottom, bound, outer } = sheet.margin
  const page = `@page{size:${width}mm ${height}mm;margin:0}.form{width:${width}mm;height:${height}mm;padding:${top}mm ${outer}mm ${bottom}mm ${bound}mm;--hand:${heights.hand}mm}`
  const data = {
    words: assets.words,
    facility: manual.facility,
    date: manual.date,
    forms: manual.forms.flatMap((f) => formView(f, paper, pen)),
  }
  return {
    css: [page, assets.styles['shared'], assets.styles['forms']].join('\n'),
    body: createTemplates(assets.templates).render('forms/forms', data),
  }
}

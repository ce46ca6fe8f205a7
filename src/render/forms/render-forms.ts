import type { Manual, ManualForm } from '../../model/manual.ts'
import type { RenderAssets } from '../assets.ts'
import { html } from '../text/html.ts'
import { createTemplates } from '../text/templates.ts'
import { createPen, type Pen } from '../views/pen.ts'

const sizes = { letter: { width: '8.5in', height: '11in' }, a4: { width: '210mm', height: '297mm' } } as const

const slug = (label: string): string => label.toLowerCase().replace(/[^a-z0-9]+/g, '-').replace(/^-|-$/g, '')

/** A place to write with the name and the tooltip that its field in the PDF gets. */
const place = (form: ManualForm, label: string, pen: Pen) => ({ label: pen.line(label), field: `${form.id}.${slug(pen.plain(label))}`, tip: `${form.title}: ${pen.plain(label)}` })

function formData(form: ManualForm, pen: Pen) {
  const boxes = (list: ManualForm['boxes']) => list.map((b) => ({ ...b, ...place(form, b.label, pen) }))
  return {
    id: form.id,
    title: pen.line(form.title),
    about: pen.line(form.about),
    boxes: boxes(form.boxes),
    after: boxes(form.after),
    hasTable: form.table !== undefined,
    // Few rows may be as high as a hand likes; many share the page.
    tight: (form.table?.rows.length ?? 0) > 14,
    heads: form.table?.heads.map((h) => pen.line(h)) ?? [],
    rows: (form.table?.rows ?? []).map((ready, i) => ({
      ready,
      // Where the first column is ready it is not written in.
      cells: (form.table?.heads ?? []).slice(ready === '' ? 0 : 1).map((head, j) => ({ field: `${form.id}.row-${i + 1}.${slug(pen.plain(head)) || `column-${j + 1}`}`, tip: `${form.title}: ${pen.plain(head)}, ${ready === '' ? `${pen.words.forms['row']} ${i + 1}` : ready}` })),
    })),
    sign: form.sign.map((s) => place(form, s, pen)),
  }
}

/** All forms in one document, each exactly one page. Every `data-field` becomes a field of the PDF. */
export function renderForms(manual: Manual, assets: RenderAssets): string {
  const pen = createPen(manual, assets.words, { worksheetHref: () => undefined, procedureHref: () => undefined })
  const size = sizes[manual.facility.paper]
  const page = `@page{size:${size.width} ${size.height};margin:0}.form{width:${size.width};height:${size.height}}`
  return createTemplates(assets.templates).render('forms/forms', {
    words: assets.words,
    facility: manual.facility,
    date: manual.date,
    style: html([assets.fontCss, page, assets.styles['shared'], assets.styles['forms']].join('\n')),
    title: `${manual.facility.name}: ${assets.words.forms['title']}`,
    forms: manual.forms.map((f) => formData(f, pen)),
  })
}

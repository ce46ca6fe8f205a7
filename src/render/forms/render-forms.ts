import type { Manual } from '../../model/manual.ts'
import { paperSize } from '../../model/papers.ts'
import { type RenderAssets, stylesOf } from '../assets.ts'
import { createTemplates } from '../text/templates.ts'
import { createPen } from '../views/pen.ts'
import { heights, margin } from './form-sizes.ts'
import { formView } from './form-view.ts'

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
  const [width, height] = paperSize(paper)
  const { top, bottom, bound, outer } = margin
  const page = `@page{size:${width}mm ${height}mm;margin:0}.form{width:${width}mm;height:${height}mm;padding:${top}mm ${outer}mm ${bottom}mm ${bound}mm;--hand:${heights.hand}mm}`
  const data = {
    words: assets.words,
    facility: manual.facility,
    date: manual.date,
    forms: manual.forms.flatMap((f) => formView(f, paper, pen)),
  }
  return {
    css: `${page}\n${stylesOf(assets, 'shared', 'forms')}`,
    body: createTemplates(assets.templates).render('forms', data),
  }
}

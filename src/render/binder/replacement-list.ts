import type { Manual } from '../../model/manual.ts'
import { type RenderAssets, stylesOf } from '../assets.ts'
import { createTemplates } from '../text/templates.ts'
import { pageFrame } from './page-rules.ts'

/**
 * The list that goes with replacement pages: what to take out of the binder and what to put in,
 * leaf by leaf.
 */
export function renderReplacementList(
  manual: Manual,
  assets: RenderAssets,
  before: { readonly revision: string; readonly date: string },
  takeOut: readonly string[],
  putIn: readonly string[],
): { readonly css: string; readonly body: string } {
  const rows = Array.from({ length: Math.max(takeOut.length, putIn.length) }, (_, i) => ({
    out: takeOut[i] ?? '',
    in: putIn[i] ?? '',
  }))
  return {
    css: [
      pageFrame({ paper: manual.facility.paper }),
      '@page{margin-left:1.15in;margin-right:.75in}',
      stylesOf(assets, 'shared', 'binder'),
    ].join('\n'),
    body: createTemplates(assets.templates).render('binder/replacement', {
      words: assets.words,
      facility: manual.facility,
      date: manual.date,
      before,
      rows,
    }),
  }
}

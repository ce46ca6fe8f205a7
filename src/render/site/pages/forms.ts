import type { SitePage } from '../page.ts'
import { offeredFile } from '../papers.ts'

/** What there is to write on; the forms themselves are printed. */
export const forms: SitePage = {
  id: 'forms',
  words: ['link', 'about'],
  under: 'plans',
  data: ({ manual, pen, printed, words }) => ({
    file: offeredFile('forms.pdf', printed, words),
    forms: manual.forms.map((f) => ({
      id: f.id,
      title: pen.line(f.title),
      about: pen.line(f.about),
      phone: f.phone !== undefined,
      who: pen.line(f.who),
      moment: pen.line(f.moment),
      kept: pen.line(f.kept),
    })),
    jumps: manual.forms.map((f) => ({ id: f.id, title: pen.line(f.title) })),
  }),
}

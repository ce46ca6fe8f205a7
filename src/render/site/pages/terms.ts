import type { SitePage } from '../page.ts'

/** How the manual is used, its terms, and its sources. */
export const terms: SitePage = {
  id: 'terms',
  words: ['menu', 'link', 'about'],
  data: ({ manual, pen }) => ({
    chapters: manual.chapters.map((c) => ({ id: c.id, title: c.title, text: pen.block(c.text) })),
    terms: manual.terms.map((t) => ({ term: t.term, means: pen.line(t.means) })),
    sources: manual.sources,
  }),
}

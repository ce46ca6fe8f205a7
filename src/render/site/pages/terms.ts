import type { SitePage } from '../page.ts'
import { termPlace } from '../search/entry.ts'

/** How the manual is used, its terms, and its sources. */
export const terms: SitePage = {
  id: 'terms',
  words: ['menu', 'link', 'about'],
  data: ({ manual, pen, words }) => ({
    chapters: manual.chapters.map((c) => ({ id: c.id, title: c.title, text: pen.block(c.text) })),
    terms: manual.terms.map((t) => ({
      id: termPlace(t.term),
      term: t.term,
      means: pen.line(t.means),
    })),
    sources: manual.sources,
    jumps: [
      ...manual.chapters.map(({ id, title }) => ({ id, title })),
      { id: 'glossary', title: words.parts.glossary },
      { id: 'sources', title: words.binder.sources },
    ],
  }),
}

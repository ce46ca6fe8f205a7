import type { SitePage } from '../page.ts'
import { kindWords } from '../search/entry.ts'
import { findables } from '../search/search-index.ts'

/** Everything by name: what a script narrows to what is looked for. */
export const search: SitePage = {
  id: 'search',
  words: [],
  data: (site) => {
    const all = findables(site)
    const kinds = [...new Set(all.map(({ kind }) => kind))]
    return {
      kinds: kinds.map((kind) => ({
        kind,
        called: kindWords(site.words)[kind],
        list: all
          .filter((found) => found.kind === kind)
          .map(({ href, title }) => ({ href, title })),
      })),
    }
  },
}

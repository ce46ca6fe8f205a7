// The script of the search page: results follow what is typed.
import type { SearchIndex } from '../model/search.ts'
import { searchPage } from './search/search-page.ts'

declare global {
  /** Made with the pages, in a script of its own. */
  var manualIndex: SearchIndex
}

searchPage(globalThis.manualIndex)

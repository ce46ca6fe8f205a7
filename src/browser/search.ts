// The script of the search page: results follow what is typed.
import type { SearchIndex } from '../model/search.ts'
import { searchPage } from './search/search-page.ts'

declare global {
  /** Made with the pages, in a script of its own. */
  var manualIndex: SearchIndex
}

/** The address holds what was looked for, so that going back shows it again. */
const keep = (query: string): void =>
  history.replaceState(
    null,
    '',
    query === '' ? location.pathname : `?q=${encodeURIComponent(query)}`,
  )

const asked = new URLSearchParams(location.search).get('q') ?? ''
const page = document.querySelector('main')
const find = page && searchPage(globalThis.manualIndex, page, keep)
if (asked === '') page?.querySelector<HTMLInputElement>('form.find input')?.focus()
else find?.(asked)

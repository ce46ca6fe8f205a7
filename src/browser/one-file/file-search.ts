import type { SearchIndex } from '../../model/search.ts'
import { searchPage } from '../search/search-page.ts'

/** The page of the search; the fields of other pages lead to it. */
export function showFileSearch(index: SearchIndex): void {
  const page = document.querySelector<HTMLElement>('#search')
  // A file that stands alone has no address to keep a query in.
  const find = page && searchPage(index, page, () => undefined)
  if (!find) return
  document.addEventListener('submit', (event) => {
    const form = event.target
    if (!(form instanceof HTMLFormElement) || !form.matches('.find') || page.contains(form)) return
    event.preventDefault()
    find(form.querySelector('input')?.value ?? '')
    location.hash = 'search'
    page.querySelector('input')?.focus()
  })
}

import type { LayingPage } from '../page/open-page.ts'
import { type Numbering, pageLabel } from './page-numbers.ts'

/** How a part is numbered, and which of the places that its slots ask for stand in it. */
export type OwnPlaces = { readonly numbering: Numbering; readonly ids: readonly string[] }

/** The page, from 0, of each place that stands on a page which is already laid out. */
function pagesInPage(ids: readonly string[]): (readonly [string, number])[] {
  const pages = [...document.querySelectorAll('.opener, .side')]
  return ids.flatMap((id) => {
    const place = document.getElementById(id)
    const page = place ? pages.findIndex((p) => p.contains(place)) : -1
    return page < 0 ? [] : [[id, page] as const]
  })
}

function fillInPage(labels: readonly (readonly [string, string])[]): void {
  const known = new Map(labels)
  for (const slot of document.querySelectorAll('[data-page-of]')) {
    const label = known.get(slot.dataset['pageOf'] ?? '')
    if (label !== undefined) slot.textContent = label
  }
}

/**
 * Puts the numbers of a part's own pages into its slots before it is printed, where openings have
 * been laid out page by page: without that a section would be printed a second time for the sake of
 * its own contents. Whether the numbers are right is seen in what was printed.
 * @returns what was put in, by place.
 */
export async function foreseePages(
  page: LayingPage,
  { numbering, ids }: OwnPlaces,
): Promise<Readonly<Record<string, string>>> {
  if (ids.length === 0) return {}
  const found = await page.evaluate(pagesInPage, ids)
  const labels = found.map(([id, at]) => [id, pageLabel(numbering, at)] as const)
  await page.evaluate(fillInPage, labels)
  return Object.fromEntries(labels)
}

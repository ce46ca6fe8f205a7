import { deadLink } from '../text/dead-link.ts'

/** The first page of the site, which the file shows first. */
const first = 'index'

/** Id of a page in the file: `procedures.seal` for `procedures/seal.html`. */
export const pageId = (path: string): string => path.replace(/\.html$/, '').replaceAll('/', '.')

/** Id of a place on a page; no two pages have the same. */
export const placeId = (path: string, id: string): string => `${pageId(path)}~${id}`

/** A relative link of a page, from the first page. */
function fromFirst(href: string, page: string): string {
  const folder = page.includes('/') ? `${page.slice(0, page.lastIndexOf('/'))}/` : ''
  return href.startsWith('../') ? href.slice(3) : `${folder}${href}`
}

/** Links that a phone opens by itself: a number to dial, a place on its map. */
const isOutside = (href: string): boolean => /^[a-z]+:/.test(href)

/**
 * Where a link of a page leads in the file. The head of a page is the page itself, since whatever
 * else is asked for would be on no page.
 * @param pages Paths of all pages.
 * @throws DeadLink for a link to what is no page.
 */
export function placeOf(href: string, page: string, pages: ReadonlySet<string>): string {
  if (isOutside(href)) return href
  const [file = '', id = ''] = href.split('#')
  const path = file === '' ? page : fromFirst(file.replace(/\?.*/, ''), page)
  if (!pages.has(path)) throw deadLink(href, `${page} leads to ${href}, which is no page`)
  return `#${id === '' || id === 'top' || id === 'text' ? pageId(path) : placeId(path, id)}`
}

export const firstPage = `${first}.html`

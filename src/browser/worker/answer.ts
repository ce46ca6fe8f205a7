import type { KeptSite } from '../../model/kept-site.ts'
import { pagesCache, papersCache } from './keep.ts'

/** The file that an address means: what stands behind `?` and `#` is for the page itself. */
export function fileOf(address: string, base: string): string | undefined {
  const { origin, pathname } = new URL(address)
  const plain = origin + pathname
  if (!plain.startsWith(base)) return undefined
  return plain === base ? 'index.html' : plain.slice(base.length)
}

/**
 * Answers with what is kept, all of one revision; what is not kept is fetched.
 * @returns undefined for addresses that are none of the site's.
 */
export function answer(
  request: Request,
  site: KeptSite,
  base: string,
): Promise<Response> | undefined {
  const file = request.method === 'GET' ? fileOf(request.url, base) : undefined
  const name = file === undefined ? undefined : cacheOf(file, site)
  if (file === undefined || name === undefined) return undefined
  return caches
    .open(name)
    .then((cache) => cache.match(base + file))
    .then((kept) => kept ?? fetch(request))
}

function cacheOf(file: string, site: KeptSite): string | undefined {
  if (file in site.files) return pagesCache(site)
  return file in site.papers ? papersCache(site) : undefined
}

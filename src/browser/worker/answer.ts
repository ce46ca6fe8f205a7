import type { KeptSite } from '../../model/kept-site.ts'
import { fileOf } from './file-of.ts'
import { pagesCache, papersCache } from './keep.ts'

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

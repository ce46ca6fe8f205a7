import type { KeptSite } from '../../model/kept-site.ts'
import { hasHash } from './has-hash.ts'

const pagesPrefix = 'manual-'
const papersPrefix = 'papers-'

export const pagesCache = ({ version }: KeptSite): string => `${pagesPrefix}${version}`
export const papersCache = ({ version }: KeptSite): string => `${papersPrefix}${version}`

/** The same file as a revision that is kept already has it; undefined where it has another. */
async function keptBefore(url: string, hash: string): Promise<Response | undefined> {
  for (const name of await caches.keys()) {
    if (!name.startsWith(pagesPrefix) && !name.startsWith(papersPrefix)) continue
    const found = await (await caches.open(name)).match(url)
    if (found && (await hasHash(await found.clone().arrayBuffer(), hash))) return found
  }
  return undefined
}

/**
 * Fetches a file of this revision, past every store on the way.
 * @throws Error when it cannot be had, or is of another revision.
 */
async function fetchExactly(url: string, hash: string): Promise<Response> {
  const answer = await fetch(new Request(url, { cache: 'reload' }))
  if (!answer.ok || !(await hasHash(await answer.clone().arrayBuffer(), hash)))
    throw new Error(`not of this revision: ${url}`)
  return answer
}

/** So many files are asked for at once: a weak signal carries few. */
const atOnce = 6

/**
 * Keeps all these files in one cache, or none: what a revision before has is taken from there.
 * @param base Address of the site.
 * @throws Error when one of them cannot be had; the cache is gone then.
 */
export async function keepAll(name: string, files: KeptSite['files'], base: string): Promise<void> {
  const cache = await caches.open(name)
  const waiting = Object.entries(files)
  const carry = async (): Promise<void> => {
    for (let next = waiting.pop(); next; next = waiting.pop()) {
      const [path, hash] = next
      const url = base + path
      await cache.put(url, (await keptBefore(url, hash)) ?? (await fetchExactly(url, hash)))
    }
  }
  try {
    await Promise.all(Array.from({ length: atOnce }, carry))
  } catch (fault) {
    await caches.delete(name)
    throw fault
  }
}

/** Drops all that belongs to other revisions. @returns whether papers were among it. */
export async function dropOthers(site: KeptSite): Promise<boolean> {
  const own = [pagesCache(site), papersCache(site)]
  const others = (await caches.keys()).filter(
    (name) =>
      (name.startsWith(pagesPrefix) || name.startsWith(papersPrefix)) && !own.includes(name),
  )
  await Promise.all(others.map((name) => caches.delete(name)))
  return others.some((name) => name.startsWith(papersPrefix))
}

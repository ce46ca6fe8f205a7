import { deadLink } from '../text/dead-link.ts'

/** One part of a binder as HTML. */
export type LinkedPart = { readonly id: string; readonly body: string }

/**
 * Links to another part leave the document in which they stand; this host stands for the binder
 * until they are joined.
 */
export const elsewhere = 'https://binder.invalid/#'

/** The places that a part has. */
export const idsIn = (body: string): ReadonlySet<string> =>
  new Set([...body.matchAll(/\sid="([^"]+)"/g)].map((m) => m[1] ?? ''))

const wantedIn = (body: string): string[] =>
  [...body.matchAll(/(?:href="#|data-page-of=")([^"]+)"/g)].map((m) => m[1] ?? '')

/**
 * Makes links from part to part findable after printing: a link that leads out of its part gets a
 * target of its own kind, and every place that anything leads to, or whose page is asked for, is
 * led to inside its part too, since the browser notes only such places.
 * @throws DeadLink naming places that nothing has.
 */
export function linkParts<T extends LinkedPart>(parts: readonly T[]): T[] {
  const own = parts.map((p) => idsIn(p.body))
  const wanted = new Set(parts.flatMap((p) => wantedIn(p.body)))
  const lost = [...wanted].filter((id) => !own.some((ids) => ids.has(id)))
  if (lost.length > 0)
    throw deadLink(
      `#${lost[0]}`,
      `the binder leads to places that it does not have: ${lost.join(', ')}`,
    )
  return parts.map((p, i) => {
    const here = own[i] ?? new Set<string>()
    const out = p.body.replace(/href="#([^"]+)"/g, (all, id: string) =>
      here.has(id) ? all : `href="${elsewhere}${id}"`,
    )
    const probes = [...here]
      .filter((id) => wanted.has(id))
      .map((id) => `<a href="#${id}"></a>`)
      .join('')
    // Inside the first element: before it they would make a page of their own.
    return {
      ...p,
      body: out.replace('>', `><nav class="probe" aria-hidden="true">${probes}</nav>`),
    }
  })
}

/** A page as it lies in a binder. */
export type LaidPage = {
  readonly label: string /** Fingerprint of what is on it. */
  readonly print: string
}

/** A leaf by the numbers on its one or two pages. */
export type Leaf = {
  readonly labels: readonly string[] /** Its pages, from 0 within the binder. */
  readonly pages: readonly number[]
}

export type Replacement = { readonly takeOut: readonly Leaf[]; readonly putIn: readonly Leaf[] }

function leavesOf(
  pages: readonly LaidPage[],
  sides: 1 | 2,
): readonly { readonly leaf: Leaf; readonly prints: string }[] {
  return Array.from({ length: Math.ceil(pages.length / sides) }, (_, i) => {
    const own = pages.slice(i * sides, (i + 1) * sides)
    return {
      leaf: { labels: own.map((p) => p.label), pages: own.map((_, j) => i * sides + j) },
      prints: own.map((p) => p.print).join(),
    }
  })
}

const nameOf = (leaf: Leaf): string => leaf.labels.join()

/**
 * Which leaves have to be exchanged to make one binder into another. A leaf stays where one with
 * the same numbers shows the same on all its pages.
 */
export function compareBinders(
  before: readonly LaidPage[],
  now: readonly LaidPage[],
  sides: 1 | 2,
): Replacement {
  const [old, fresh] = [leavesOf(before, sides), leavesOf(now, sides)]
  const differing = (these: typeof old, those: typeof old): Leaf[] => {
    const known = new Map(those.map((l) => [nameOf(l.leaf), l.prints]))
    return these.filter((l) => known.get(nameOf(l.leaf)) !== l.prints).map((l) => l.leaf)
  }
  return { takeOut: differing(old, fresh), putIn: differing(fresh, old) }
}

import type { Hand } from '../../render/binder/page-rules.ts'
import type { Binder, BinderPart } from '../../render/binder/render-binder.ts'

/** Where the parts of a binder come to lie, from their page counts. */
export type Order = {
  /** The side of a leaf on which each part begins. */
  readonly hands: readonly Hand[]
  /** Whether a blank page follows each part, so that the next begins on a right-hand page. */
  readonly blanks: readonly boolean[]
  /** First page of each part in the whole, from 0. */
  readonly starts: readonly number[]
}

/**
 * Lays the parts out one after another; where one side of a leaf is printed every page is a
 * right-hand page.
 * @param counts Pages of each part.
 */
export function orderParts(
  counts: readonly number[],
  {
    sides,
    parts,
  }: Pick<Binder, 'sides'> & { readonly parts: readonly Pick<BinderPart, 'beginsRight'>[] },
): Order {
  let at = 0
  const rows = counts.map((count, i) => {
    const start = at
    const blank = sides === 2 && parts[i + 1]?.beginsRight === true && (at + count) % 2 === 1
    at += count + (blank ? 1 : 0)
    return {
      start,
      blank,
      hand: sides === 1 || start % 2 === 0 ? ('right' as const) : ('left' as const),
    }
  })
  return {
    hands: rows.map((r) => r.hand),
    blanks: rows.map((r) => r.blank),
    starts: rows.map((r) => r.start),
  }
}

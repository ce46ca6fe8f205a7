/** Pages that a folded leaf carries. */
export const pagesOfLeaf = 4

/** Two pages beside each other on one side of a leaf, from 1. */
export type Side = readonly [left: number, right: number]

/**
 * The sides of leaves that lie in each other and are folded in the middle: front and back of the
 * outermost leaf first. Each leaf is turned over on its short edge.
 * @param pages A multiple of four.
 * @throws RangeError for any other number.
 */
export function bookletSides(pages: number): readonly Side[] {
  if (pages <= 0 || pages % pagesOfLeaf !== 0)
    throw new RangeError(`${pages} pages do not fill folded leaves`)
  return Array.from({ length: pages / 2 }, (_, i): Side => {
    const [low, high] = [i + 1, pages - i]
    return i % 2 === 0 ? [high, low] : [low, high]
  })
}

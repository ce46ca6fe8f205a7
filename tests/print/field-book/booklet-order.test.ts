import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { bookletSides } from '../../../src/print/field-book/booklet-order.ts'

/**
 * Prints sides on leaves, turns each on its short edge, lays the leaves in each other, folds them,
 * and leafs through the book.
 */
function readFolded(sides: ReturnType<typeof bookletSides>): number[] {
  const leaves = Array.from({ length: sides.length / 2 }, (_, i) => ({
    front: sides[2 * i],
    back: sides[2 * i + 1],
  }))
  // The right half of a front is read first, and behind it lies the left half of its back.
  const before = leaves.flatMap(({ front, back }) => [front?.[1] ?? 0, back?.[0] ?? 0])
  const after = leaves.flatMap(({ front, back }) => [front?.[0] ?? 0, back?.[1] ?? 0]).reverse()
  return [...before, ...after]
}

describe('a booklet of folded leaves', () => {
  it('has its first and last page on the outside of the outermost leaf', () => {
    expect(bookletSides(8)).toEqual([
      [8, 1],
      [2, 7],
      [6, 3],
      [4, 5],
    ])
  })

  it('reads from the first page to the last when it is folded', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 30 }), (leaves) => {
        const pages = 4 * leaves
        expect(readFolded(bookletSides(pages))).toEqual(
          Array.from({ length: pages }, (_, i) => i + 1),
        )
      }),
    )
  })

  it('is refused for pages that do not fill its leaves', () => {
    for (const pages of [0, 1, 6, 23, -4]) expect(() => bookletSides(pages)).toThrow(RangeError)
  })
})

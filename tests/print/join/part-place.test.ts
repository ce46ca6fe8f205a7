import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { elementIdAt, objectNumberAt, parentKeyAt } from '../../../src/print/join/part-place.ts'

const most = 40

/** Two different places of objects in a whole of some parts. */
const twoPlaces = fc
  .integer({ min: 1, max: most })
  .chain((of) => {
    const one = fc.record({ part: fc.nat(of - 1), i: fc.nat(50_000) })
    return fc.tuple(fc.constant(of), one, one)
  })
  .filter(([, a, b]) => a.part !== b.part || a.i !== b.i)

describe('places of parts in a whole', () => {
  it('give every object a number of its own, behind those of the whole', () => {
    fc.assert(
      fc.property(twoPlaces, ([of, a, b]) => {
        const [one, other] = [a, b].map(({ part, i }) => objectNumberAt({ part, of }, i))
        expect(one).not.toBe(other)
        expect(one).toBeGreaterThanOrEqual(4096)
      }),
    )
  })

  it('give keys and ids that stand in the order of the parts, within what a number may be', () => {
    fc.assert(
      fc.property(twoPlaces, ([of, a, b]) => {
        const [first, second] =
          a.part < b.part || (a.part === b.part && a.i < b.i) ? [a, b] : [b, a]
        const key = ({ part, i }: typeof a) => parentKeyAt({ part, of }, i)
        const id = ({ part, i }: typeof a) => elementIdAt({ part, of }, i)
        expect(key(first)).toBeLessThan(key(second))
        expect(id(first) < id(second)).toBe(true)
        expect(key(second)).toBeLessThan(2 ** 31)
      }),
    )
  })
})

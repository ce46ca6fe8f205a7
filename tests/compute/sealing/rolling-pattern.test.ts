import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { firstPlaces, rollingPattern } from '../../../src/compute/sealing/rolling-pattern.ts'
import { FEW, IN, whole } from '../support/realistic.ts'

const dual = { tread: 8 * IN, perSide: 2, gap: 5 * IN, track: 72 * IN, overlap: IN }

/** Which inches from the rail a block has rolled, counted from its inside edge. */
function rolledInches(tires: typeof dual, places: readonly number[]): ReadonlySet<number> {
  const rolled = new Set<number>()
  const inches = (m: number): number => Math.round(m / IN)
  for (const place of places)
    for (const side of [0, inches(tires.track)])
      for (let tire = 0; tire < tires.perSide; tire++) {
        const from = inches(place) + side + tire * inches(tires.tread + tires.gap)
        for (let i = 0; i < inches(tires.tread); i++) rolled.add(from + i)
      }
  return rolled
}

describe('moving out from lap to lap', () => {
  it('goes 7, 20, 7, 20, 7 in with twin tires of 8 in, 5 in apart, and rolls 154 in so', () => {
    const pattern = rollingPattern(dual)
    const places = firstPlaces(pattern).map((m) => Math.round(m / IN))
    expect(places).toEqual([0, 7, 27, 34, 54, 61])
    expect(pattern.width / IN).toBeCloseTo(154, 9)
    expect(pattern.jump / IN).toBeCloseTo(92, 9)
  })

  it('leaves no inch of a block loose, whatever the tires', () => {
    fc.assert(
      fc.property(
        whole(6, 14),
        whole(1, 2),
        whole(0, 9),
        whole(50, 90),
        whole(0, 3),
        (tread, perSide, gap, track, overlap) => {
          const tires = {
            tread: tread * IN,
            perSide,
            gap: gap * IN,
            track: track * IN,
            overlap: overlap * IN,
          }
          const pattern = rollingPattern(tires)
          const rolled = rolledInches(tires, firstPlaces(pattern))
          for (let i = 0; i < Math.round(pattern.width / IN); i++)
            expect(rolled.has(i), `inch ${i}`).toBe(true)
        },
      ),
      FEW,
    )
  })

  it('begins the next block over the edge of the last', () => {
    const pattern = rollingPattern(dual)
    const last = firstPlaces(pattern).at(-1) ?? 0
    expect((last + pattern.jump) / IN).toBeCloseTo(pattern.width / IN - 1, 9)
  })
})

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { cellVolume, gridVolume } from '../../../src/compute/survey/grid-volume.ts'
import { FEW, inches, whole } from '../support/realistic.ts'

describe('grid', () => {
  it('keeps cut and fill apart', () => {
    // Cells of 100 m²: the left one is cut 0.1 m deep, the right one filled 0.05 m.
    const { cut, fill } = gridVolume(
      [
        [0.1, 0.1, -0.2],
        [0.1, 0.1, -0.2],
      ],
      100,
    )
    expect([cut, fill]).toEqual([expect.closeTo(10, 9), expect.closeTo(5, 9)])
  })

  it('that is even is area times depth, however many cells', () => {
    fc.assert(
      fc.property(inches(1, 6), whole(2, 9), whole(2, 5), (depth, rows, columns) => {
        const grid = Array.from({ length: rows }, () =>
          Array.from({ length: columns }, () => depth),
        )
        expect(gridVolume(grid, 50).cut).toBeCloseTo((rows - 1) * (columns - 1) * 50 * depth, 6)
      }),
      FEW,
    )
  })

  it('throws at a row that is too short and at a cell without corners', () => {
    expect(() => gridVolume([[1, 2], [1]], 10)).toThrow(RangeError)
    expect(() => cellVolume([1, 2], 10)).toThrow(RangeError)
  })
})

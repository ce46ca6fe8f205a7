import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  endAreaVolume,
  prismoidVolume,
  pyramidVolume,
} from '../../../src/compute/survey/end-area.ts'
import { cellVolume, gridVolume } from '../../../src/compute/survey/grid-volume.ts'
import { simpsonArea, trapezoidArea } from '../../../src/compute/survey/offset-area.ts'
import {
  coordinateArea,
  levelSection,
  veeSection,
} from '../../../src/compute/survey/section-area.ts'
import { slopeAngle, slopeOf } from '../../../src/compute/survey/slope.ts'
import { taperedTrench } from '../../../src/compute/survey/tapered-trench.ts'
import { FEW, feet, inches, whole } from '../support/realistic.ts'

describe('volumes between sections', () => {
  it('take half as much again as a pyramid where a section shrinks to nothing', () => {
    expect(endAreaVolume(6, 0, 10) / pyramidVolume(6, 10)).toBeCloseTo(1.5, 9)
    // A pyramid's section at mid-length is a quarter of its base.
    expect(prismoidVolume(6, 1.5, 0, 10)).toBeCloseTo(pyramidVolume(6, 10), 9)
  })

  it('agree for a prism and add up along it', () => {
    fc.assert(
      fc.property(feet(1, 60), feet(1, 60), feet(1, 400), (a, b, length) => {
        expect(endAreaVolume(a, a, length)).toBeCloseTo(prismoidVolume(a, a, a, length), 6)
        const middle = (a + b) / 2
        expect(
          endAreaVolume(a, middle, length / 2) + endAreaVolume(middle, b, length / 2),
        ).toBeCloseTo(endAreaVolume(a, b, length), 6)
      }),
      FEW,
    )
  })

  it('throw at a section below zero', () => {
    expect(() => endAreaVolume(-1, 2, 3)).toThrow(RangeError)
  })
})

describe('areas', () => {
  it('of a level section without floor are those of a V', () => {
    expect(levelSection(0, 1.5, 4)).toBeCloseTo(veeSection(12, 4), 9)
  })

  it('by offsets are exact for a straight edge, both ways', () => {
    fc.assert(
      fc.property(feet(1, 30), feet(0, 3), whole(3, 9), (start, step, count) => {
        const offsets = Array.from({ length: count }, (_, i) => start + i * step)
        expect(simpsonArea(offsets, 5)).toBeCloseTo(trapezoidArea(offsets, 5), 6)
      }),
      FEW,
    )
  })

  it('by coordinates do not change when the figure is moved or gone around the other way', () => {
    const corners = [
      [0, 0],
      [30, 5],
      [40, 25],
      [10, 30],
    ] as const
    expect(coordinateArea(corners.map(([x, y]) => [x + 100, y - 70] as const))).toBeCloseTo(
      coordinateArea(corners),
      6,
    )
    expect(coordinateArea([...corners].reverse())).toBeCloseTo(coordinateArea(corners), 9)
  })

  it('throw with too few offsets or corners', () => {
    expect(() => trapezoidArea([1], 5)).toThrow(RangeError)
    expect(() => simpsonArea([1, 2], 5)).toThrow(RangeError)
    expect(() =>
      coordinateArea([
        [0, 0],
        [1, 1],
      ]),
    ).toThrow(RangeError)
  })
})

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

describe('slopes and trenches', () => {
  it('turn 5 % into 2.9 degrees, not 5', () => {
    expect((180 / Math.PI) * slopeAngle(slopeOf(5, 100))).toBeCloseTo(2.862, 3)
    expect(() => slopeOf(5, 0)).toThrow(RangeError)
  })

  it('remove the full wedge of a trench without ends, and refuse ends that are larger than it', () => {
    const plain = {
      width: 2,
      depth: 1,
      length: 10,
      corner: { base: 0, rise: 0 },
      end: { length: 0, narrowing: 0 },
    }
    expect(taperedTrench(plain).removed).toBe(10)
    expect(() => taperedTrench({ ...plain, corner: { base: 9, rise: 9 } })).toThrow(RangeError)
  })
})

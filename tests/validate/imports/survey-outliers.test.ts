import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { median } from '../../../src/validate/imports/median.ts'
import {
  depthOutliers,
  levelOutliers,
  medianSlope,
} from '../../../src/validate/imports/survey-outliers.ts'

const offsets = [0.3, 5, 10, 15, 19]

/** A station with its readings up to an inch off the slope. */
const stations = fc
  .array(fc.integer({ min: -25, max: 25 }), { minLength: 5, maxLength: 5 })
  .map((hairs) =>
    offsets.map((offset, i) => ({
      station: 0,
      offset,
      value: 30 + 0.03 * offset + (hairs[i] ?? 0) / 1000,
    })),
  )

describe('levels that lie off their station', () => {
  it('are none where a surface is only rough', () => {
    fc.assert(
      fc.property(stations, (readings) => {
        expect(levelOutliers(readings)).toEqual([])
      }),
    )
  })

  it('are the one that was misread, wherever it stands', () => {
    fc.assert(
      fc.property(stations, fc.nat(4), fc.constantFrom(-27, -0.6, 0.6, 3), (readings, i, off) => {
        const misread = readings.map((r, k) => (k === i ? { ...r, value: r.value + off } : r))
        const found = levelOutliers(misread)
        expect(found.map((o) => [o.reading.offset, o.credible])).toEqual([[offsets[i], false]])
      }),
    )
  })

  it('do not move the slope that the others give', () => {
    fc.assert(
      fc.property(stations, fc.nat(4), (readings, i) => {
        const misread = readings.map((r, k) => (k === i ? { ...r, value: r.value - 27 } : r))
        expect(medianSlope(misread)).toBeGreaterThan(0)
      }),
    )
  })
})

describe('depths far from the others', () => {
  const day = [30, 32, 35, 38, 33, 29].map((mm, i) => ({ station: i, offset: 1, value: mm / 1000 }))

  it('are none where depths only vary', () => expect(depthOutliers(day)).toEqual([]))

  it('are an eleven-inch reading, which no cushion has, and a hole, which may be so', () => {
    const eleven = { station: 9, offset: 1, value: 0.28 }
    expect(depthOutliers([...day, eleven])).toMatchObject([{ reading: eleven, credible: false }])
    const hole = { station: 9, offset: 1, value: 0.12 }
    expect(depthOutliers([...day, hole])).toMatchObject([{ reading: hole, credible: true }])
  })
})

it('takes the middle one, or the mean of two', () => {
  expect([median([3, 1, 2]), median([4, 1, 2, 3])]).toEqual([2, 2.5])
})

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

describe('levels of stations with few readings', () => {
  const at = (station: number, offsets: readonly number[], wrong = 0, which = -1) =>
    offsets.map((offset, i) => ({
      station,
      offset,
      value: 30 + 0.03 * offset + (i === which ? wrong : 0),
    }))

  it('bend no farther than a dished track does, else the middle one is asked about', () => {
    expect(levelOutliers(at(0, [0.5, 10, 19], 0.05, 1))).toEqual([])
    const [found] = levelOutliers(at(0, [0.5, 10, 19], -0.3048, 1))
    expect(found?.reading.offset).toBe(10)
    // A foot at the outside shows as half a foot in the middle.
    expect(levelOutliers(at(0, [0.5, 10, 19], 0.3048, 2))).toHaveLength(1)
  })

  it('fall about as the rest of the track does, where there are two', () => {
    const rest = [0, 100, 200].flatMap((station) => at(station, [0.5, 19]))
    expect(levelOutliers(rest)).toEqual([])
    const found = levelOutliers([...rest, ...at(300, [0.5, 19], 2.5, 1)])
    expect(found.map((o) => [o.reading.station, o.credible])).toEqual([[300, true]])
  })
})

describe('depths far from the others', () => {
  it('are also those that the readings around them do not bear out', () => {
    const depths = [0, 100, 200, 300].flatMap((station, i) =>
      [1, 10, 18].map((offset, k) => ({ station, offset, value: 0.03 + 0.01 * ((i + k) % 3) })),
    )
    expect(depthOutliers(depths)).toEqual([])
    const typed = depths.map((r) =>
      r.station === 200 && r.offset === 10 ? { ...r, value: 0.11 } : r,
    )
    expect(depthOutliers(typed).map((o) => [o.reading.station, o.credible])).toEqual([[200, true]])
  })

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

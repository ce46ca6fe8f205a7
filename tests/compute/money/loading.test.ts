import { describe, expect, it } from 'vitest'
import { loadingRate } from '../../../src/compute/money/loading.ts'

describe('rollers, loaders and trucks', () => {
  it('load a bucket a minute at 1 m³ as 60 m³ an hour', () => {
    expect(3600 * loadingRate(1, 1, 60, 1)).toBeCloseTo(60, 9)
    expect(() => loadingRate(1, 1, 0, 1)).toThrow(RangeError)
  })
})

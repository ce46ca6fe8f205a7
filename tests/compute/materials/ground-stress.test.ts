import { describe, expect, it } from 'vitest'
import {
  circleStress,
  cornerStress,
  pointLoadFor,
  pointStress,
  tireContact,
} from '../../../src/compute/materials/ground-stress.ts'

describe('stress in the ground', () => {
  it('comes back from stress to load', () => {
    expect(pointLoadFor(pointStress(50_000, 2, 1), 2, 1)).toBeCloseTo(50_000, 6)
    expect(() => pointStress(50_000, 0, 1)).toThrow(RangeError)
  })

  it('is a quarter of the pressure near the surface under a corner, and all of it under the middle of a circle', () => {
    expect(cornerStress(100, 1, 1, 0.001)).toBeCloseTo(25, 3)
    expect(circleStress(100, 1, 0.001)).toBeCloseTo(100, 3)
  })

  it('under a small circle is that of a point load far down', () => {
    expect(circleStress(1000, 0.1, 5)).toBeCloseTo(pointStress(1000 * Math.PI * 0.01, 5, 0), 2)
  })

  it('under a tire spreads over load by pressure', () => {
    expect(tireContact(20_000, 400_000).area).toBeCloseTo(0.05, 9)
    expect(() => tireContact(20_000, 0)).toThrow(RangeError)
  })
})

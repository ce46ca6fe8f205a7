import { describe, expect, it } from 'vitest'
import { baseDensity } from '../../../src/compute/materials/base-density.ts'
import { numberOf } from '../support/answers.ts'

describe('density of the base', () => {
  const tests = [
    { wet: 2200, moisture: 0.08 },
    { wet: 2100, moisture: 0.05 },
  ]

  it('is counted dry, and is full at the highest of the laboratory', () => {
    const found = baseDensity([{ wet: 2160, moisture: 0.08 }]).compute({
      highest: 2000,
      best: 0.08,
    })
    expect(found.relative).toBeCloseTo(1, 12)
    expect(found.wetter).toBeCloseTo(0, 12)
  })

  it('has a softest place no better than its mean', () => {
    const found = baseDensity(tests).compute({ highest: 2100, best: 0.08 })
    expect(numberOf(found.lowest)).toBeLessThanOrEqual(numberOf(found.relative))
  })
})

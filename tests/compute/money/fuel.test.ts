import { describe, expect, it } from 'vitest'
import { fuelUse, YEARLY_MEAN } from '../../../src/compute/money/fuel.ts'

describe('pull and power', () => {
  it('burns in step with power', () => {
    expect(fuelUse(40_000)).toBeCloseTo(2 * fuelUse(20_000), 12)
    // 0.044 gal/h for each horsepower: 3.785 L × 0.044 ÷ 0.7457 kW = 0.2234 L for a kilowatt-hour
    expect(YEARLY_MEAN * 3.6e9).toBeCloseTo(0.2234, 4)
  })
})

import { describe, expect, it } from 'vitest'
import { ovenMoisture, weightOf } from '../../../src/browser/records/oven.ts'

describe('moisture by oven', () => {
  it('is the water that left against what is dry: ASTM D2216, w = (M_cms − M_cds) / (M_cds − M_c)', () => {
    // Worked by hand: 10 of water on 80 of dry soil.
    expect(ovenMoisture(110, 100, 20)).toBeCloseTo(0.125, 12)
    expect(ovenMoisture(3.3, 3.0, 0)).toBeCloseTo(0.1, 12)
  })

  it('is not given where the weights cannot be so', () => {
    expect(ovenMoisture(99, 100, 20)).toBeUndefined()
    expect(ovenMoisture(110, 20, 20)).toBeUndefined()
  })

  it('takes what a scale shows, with its unit or without', () => {
    expect(['120', '12.5 g', '.5', '3 oz', 'much', ''].map(weightOf)).toEqual([
      120,
      12.5,
      0.5,
      3,
      undefined,
      undefined,
    ])
  })
})

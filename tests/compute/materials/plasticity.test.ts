import { describe, expect, it } from 'vitest'
import { plasticity } from '../../../src/compute/materials/plasticity.ts'

describe('plasticity', () => {
  it('is nothing at the plastic limit and all at the liquid limit', () => {
    const at = (moisture: number) =>
      plasticity.compute({ liquid: 0.45, plastic: 0.2, moisture }).liquidity
    expect(at(0.2)).toBeCloseTo(0, 12)
    expect(at(0.45)).toBeCloseTo(1, 12)
  })
  it('refuses a material whose limits are one', () => {
    expect(plasticity.compute({ liquid: 0.2, plastic: 0.2, moisture: 0.1 }).index).toEqual({
      refused: 'not-plastic',
    })
  })
})

import { describe, expect, it } from 'vitest'
import { soilGroup } from '../../../src/compute/materials/soil-group.ts'

describe('soil groups', () => {
  it('needs grain sizes only for clean and nearly clean soils', () => {
    expect(soilGroup({ fines: 0.08, sand: 0.7 })).toEqual({
      refused: expect.stringMatching(/^grain-sizes-unknown$/) as string,
    })
    expect(soilGroup({ fines: 0.2, sand: 0.7 })).toBe('SM')
  })

  it('gives dual symbols from 5 to 12 % of fines, both ends included', () => {
    const sizes = [0.1, 0.4, 1] as const
    const of = (fines: number): unknown => soilGroup({ fines, sand: 0.8, sizes })
    expect([0.049, 0.05, 0.12, 0.121].map(of)).toEqual(['SW', 'SW-SM', 'SW-SM', 'SM'])
  })

  it('splits clay from silt on the A-line, and high from low at a limit of 50', () => {
    const of = (liquid: number, plastic: number): unknown =>
      soilGroup({ fines: 0.9, sand: 0.1, limits: { liquid, plastic } })
    // PI on the line at LL 40: 0.73 × 20 = 14.6
    expect(of(0.4, 0.4 - 0.146)).toBe('CL')
    expect(of(0.4, 0.4 - 0.145)).toBe('ML')
    expect([of(0.5, 0.2), of(0.5, 0.4)]).toEqual(['CH', 'MH'])
    expect(of(0.25, 0.2)).toBe('CL-ML')
  })

  it('throws at parts that add up to more than the sample', () => {
    expect(() => soilGroup({ fines: 0.6, sand: 0.6 })).toThrow(RangeError)
  })
})

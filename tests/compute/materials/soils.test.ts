import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  coarserThan,
  coefficients,
  grainSize,
  type Passing,
} from '../../../src/compute/materials/gradation.ts'
import { soilGroup } from '../../../src/compute/materials/soil-group.ts'
import { soilTexture, textures } from '../../../src/compute/materials/soil-texture.ts'
import { sieveNames, sieveOpening } from '../../../src/model/sieves.ts'
import { expectRefused, numberOf } from '../support/answers.ts'
import { FEW, percent } from '../support/realistic.ts'

const mm = (opening: number, passing: number): Passing => ({ opening: opening / 1000, passing })
const curve = [mm(4.75, 0.96), mm(2, 0.7), mm(0.425, 0.35), mm(0.075, 0.12)]

describe('sieves', () => {
  it('get finer down the table, and an unknown one has no opening', () => {
    const openings = sieveNames.map((name) => sieveOpening(name) ?? 0)
    expect([...openings].sort((a, b) => b - a)).toEqual(openings)
    expect(sieveOpening('No. 200')).toBe(0.000075)
    expect(sieveOpening('No. 12')).toBeUndefined()
  })
})

describe('sieve analysis', () => {
  it('reads sizes between sieves on a logarithmic scale', () => {
    // D60: from 0.425 (35 %) to 2 (70 %): 0.425 × (2 ÷ 0.425)^(25 ÷ 35) = 1.285 mm
    expect(1000 * numberOf(grainSize(0.6, curve))).toBeCloseTo(1.285, 3)
    expect(1000 * numberOf(grainSize(0.7, curve))).toBeCloseTo(2, 9)
  })

  it('refuses a share that no sieve reaches', () => {
    expectRefused([grainSize(0.1, curve), grainSize(0.99, curve)], /do not reach/)
    expectRefused([coarserThan(0.00001, curve)], /outside the sieves/)
  })

  it('throws at a curve that runs backward, and at sizes out of order', () => {
    expect(() => grainSize(0.5, [mm(2, 0.3), mm(4.75, 0.2)])).toThrow(RangeError)
    expect(() => coefficients(0.5, 0.2, 1)).toThrow(RangeError)
  })

  it('finds the share back from the size', () => {
    fc.assert(
      fc.property(percent(13, 95), (wanted) => {
        expect(1 - numberOf(coarserThan(numberOf(grainSize(wanted, curve)), curve))).toBeCloseTo(
          wanted,
          9,
        )
      }),
      FEW,
    )
  })
})

describe('soil groups', () => {
  it('needs grain sizes only for clean and nearly clean soils', () => {
    expect(soilGroup({ fines: 0.08, sand: 0.7 })).toEqual({
      refused: expect.stringMatching(/D10/) as string,
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

describe('texture', () => {
  it('finds one of the twelve classes for every mixture', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 100 }),
        fc.integer({ min: 0, max: 100 }),
        (sand, clay) => {
          fc.pre(sand + clay <= 100)
          expect(textures).toContain(soilTexture(sand / 100, clay / 100))
        },
      ),
      { numRuns: 100 },
    )
  })

  it('reaches all twelve', () => {
    const found = new Set<string>()
    for (let sand = 0; sand <= 100; sand += 2)
      for (let clay = 0; sand + clay <= 100; clay += 2)
        found.add(soilTexture(sand / 100, clay / 100))
    expect([...found].sort()).toEqual([...textures].sort())
  })

  it('throws at more than the whole', () => {
    expect(() => soilTexture(0.7, 0.4)).toThrow(RangeError)
  })
})

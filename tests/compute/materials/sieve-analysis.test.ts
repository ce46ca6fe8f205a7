import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { sieveAnalysis } from '../../../src/compute/materials/sieve-analysis.ts'
import type { SieveTest } from '../../../src/model/material-tests.ts'
import { sieveOpening } from '../../../src/model/sieves.ts'
import { expectRefused, numberOf } from '../support/answers.ts'
import { FEW, whole } from '../support/realistic.ts'

const sample = (passing: Readonly<Record<string, number>>): SieveTest => ({
  date: '2027-06-12',
  by: 'P. L.',
  clay: undefined,
  limits: undefined,
  sieves: Object.entries(passing)
    .map(([name, share]) => ({ name, opening: sieveOpening(name) ?? 0, passing: share / 100 }))
    .sort((a, b) => b.opening - a.opening),
})

const dust = {
  '3/8 in': 100,
  'No. 4': 91,
  'No. 8': 71,
  'No. 16': 52,
  'No. 30': 38,
  'No. 50': 26,
  'No. 100': 16,
  'No. 200': 9,
}

const grit = 0.003

/** Falling shares on five sieves, in any order. */
const samples = fc.array(whole(0, 100), { minLength: 5, maxLength: 5 }).map((shares) => {
  const falling = [...shares].sort((a, b) => b - a)
  return sample({
    'No. 4': falling[0] ?? 0,
    'No. 10': falling[1] ?? 0,
    'No. 40': falling[2] ?? 0,
    'No. 100': falling[3] ?? 0,
    'No. 200': falling[4] ?? 0,
  })
})

describe('a sieve analysis', () => {
  it('reads sizes from the curve: worked by hand', () => {
    // Between No. 200 (9 % at 0.075 mm) and No. 100 (16 % at 0.15 mm): 0.075 × 2^(1/7) = 0.0828 mm.
    const found = sieveAnalysis(sample(dust)).compute({ grit })
    expect(numberOf(found.d10) * 1000).toBeCloseTo(0.075 * 2 ** (1 / 7), 6)
    expect(numberOf(found.uniformity)).toBeCloseTo(numberOf(found.d60) / numberOf(found.d10), 12)
    expect(found.gravel).toBeCloseTo(0.09, 12)
    expect(found.sand).toBeCloseTo(0.82, 12)
  })

  it('adds up to the whole, keeps sizes in order, and does not care in which order the sieves stand', () => {
    fc.assert(
      fc.property(samples, (test) => {
        const { compute } = sieveAnalysis(test)
        const found = compute({ grit: 0.002 })
        expect(numberOf(found.gravel) + numberOf(found.sand) + numberOf(found.fines)).toBeCloseTo(
          1,
          9,
        )
        const sizes = [found.d10, found.d30, found.d60].filter((d) => typeof d === 'number')
        expect(sizes).toEqual([...sizes].sort((a, b) => a - b))
        expect(
          sieveAnalysis({ ...test, sieves: [...test.sieves].reverse() }).compute({ grit: 0.002 }),
        ).toEqual(found)
      }),
      FEW,
    )
  })

  it('finds less grit above a larger size', () => {
    const share = (size: number): number =>
      numberOf(sieveAnalysis(sample(dust)).compute({ grit: size }).share)
    expect(share(0.004)).toBeLessThan(share(0.003))
  })

  it('refuses what the sieves do not reach', () => {
    const found = sieveAnalysis(sample({ 'No. 4': 90, 'No. 40': 60, 'No. 200': 30 })).compute({
      grit: 0.012,
    })
    expectRefused([found.d10, found.uniformity, found.curvature], /^sieves-miss-share$/)
    expectRefused([found.share], /^sieves-miss-grit$/)
  })
})

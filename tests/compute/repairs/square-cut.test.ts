import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { squareCut } from '../../../src/compute/repairs/square-cut.ts'
import { expectRefused, numberOf } from '../support/answers.ts'
import { FEW, FT, FT3, feet, GAL, IN, inches, PCF, TON } from '../support/realistic.ts'

const example = {
  width: 24 * IN,
  depth: 3 * IN,
  length: 12 * FT,
  packedWeight: 130 * PCF,
  looseWeight: 100 * PCF,
  lift: 2.5 * IN,
  moisture: 0.08,
  barrow: 3 * FT3,
  thin: IN,
  people: 2,
  labor: 1800 / FT3,
}

describe('washout cut square', () => {
  it('takes 6 ft³ packed, 7.8 ft³ loose, two lifts, three barrows, 8 gal and an hour and a half', () => {
    // 2 × 0.25 × 12 = 6 ft³; × 130 = 780 lb; ÷ 100 = 7.8 ft³; loose depth 3.9 in ÷ 2.5 = 1.6 → 2;
    // 62.4 lb of water = 7.48 gal; 6 × ½ h ÷ 2
    const answers = squareCut.compute(example)
    expect(numberOf(answers.volume) / FT3).toBeCloseTo(6, 9)
    expect(numberOf(answers.mass) / TON).toBeCloseTo(0.39, 9)
    expect(numberOf(answers.loose) / FT3).toBeCloseTo(7.8, 9)
    expect(answers.lifts).toBe(2)
    expect(answers.barrows).toBe(3)
    expect(numberOf(answers.water) / GAL).toBeCloseTo(7.477, 3)
    expect(answers['thin-share']).toBeCloseTo(1 / 3, 9)
    expect(numberOf(answers.time)).toBeCloseTo(5400, 6)
  })

  it('takes one lift where it just fits', () => {
    // 2.5 in loose pack to 2.5 × 100 ÷ 130 = 1.923 in
    expect(squareCut.compute({ ...example, depth: (2.5 / 1.3) * IN }).lifts).toBe(1)
  })

  it('refuses a share where all of the fill is too thin', () => {
    expectRefused([squareCut.compute({ ...example, depth: IN })['thin-share']], /^fill-too-thin$/)
  })

  it('gives material but no time where nobody works', () => {
    const { barrows, time } = squareCut.compute({ ...example, people: 0 })
    expect(barrows).toBe(3)
    expectRefused([time], /nobody/)
  })

  it('adds up over two halves of its length', () => {
    fc.assert(
      fc.property(inches(6, 40), inches(2, 4), feet(2, 60), (width, depth, length) => {
        const whole = squareCut.compute({ ...example, width, depth, length })
        const half = squareCut.compute({ ...example, width, depth, length: length / 2 })
        for (const name of ['volume', 'mass', 'loose', 'water', 'time'] as const) {
          expect(2 * numberOf(half[name])).toBeCloseTo(numberOf(whole[name]), 6)
        }
      }),
      FEW,
    )
  })

  it('brings barrows enough, and needs more lifts the deeper it is', () => {
    fc.assert(
      fc.property(inches(2, 6), (depth) => {
        const { barrows, loose, lifts } = squareCut.compute({ ...example, depth })
        expect(numberOf(barrows) * example.barrow).toBeGreaterThanOrEqual(numberOf(loose) - 1e-6)
        expect(
          numberOf(squareCut.compute({ ...example, depth: 2 * depth }).lifts),
        ).toBeGreaterThanOrEqual(numberOf(lifts))
      }),
      FEW,
    )
  })
})

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { letterHeight } from '../../../src/compute/safety/letter-height.ts'
import { readingDistance } from '../../../src/compute/safety/reading-distance.ts'
import { numberOf } from '../support/answers.ts'
import { FEW, IN, whole } from '../support/realistic.ts'

describe('letters of a sign', () => {
  const letters = (distance: number, which: 'message' | 'signal' | 'poor'): number =>
    numberOf(letterHeight.compute({ distance })[which])

  it('are read from as far as they were made for', () => {
    fc.assert(
      fc.property(whole(18, 400), (points) => {
        // Capitals of the sheets' face are 0.66 of the type size.
        expect(letters(readingDistance(points), 'message')).toBeCloseTo(
          (points * 0.66 * IN) / 72,
          12,
        )
      }),
      FEW,
    )
  })

  it('are higher for a signal word and in poor light, and never too small to read', () => {
    fc.assert(
      fc.property(whole(1, 300), (feet) => {
        const d = feet * 0.3048
        expect(letters(d, 'message')).toBeGreaterThanOrEqual(0.16 * IN)
        expect(letters(d, 'signal')).toBeGreaterThanOrEqual(letters(d, 'message'))
        expect(letters(d, 'poor')).toBeGreaterThan(letters(d, 'message'))
      }),
      FEW,
    )
  })
})

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { powerLine } from '../../../src/compute/safety/power-line.ts'
import { expectRefused, numberOf } from '../support/answers.ts'
import { FEW, whole } from '../support/realistic.ts'

describe('an overhead line', () => {
  it('is kept farther away the higher its voltage, and nothing is said beyond the table', () => {
    const distance = (kV: number) => powerLine.compute({ voltage: kV * 1000 }).distance
    fc.assert(
      fc.property(whole(0, 999), (kV) => {
        expect(numberOf(distance(kV + 1))).toBeGreaterThanOrEqual(numberOf(distance(kV)))
      }),
      FEW,
    )
    // The value after "to" belongs to the row.
    expect(numberOf(distance(51))).toBeGreaterThan(numberOf(distance(50)))
    expectRefused([distance(1001)], /^beyond-line-table$/)
  })
})

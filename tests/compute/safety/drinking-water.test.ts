import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { drinkingWater } from '../../../src/compute/safety/drinking-water.ts'
import { numberOf } from '../support/answers.ts'
import { FEW, whole } from '../support/realistic.ts'

const hour = 3600

describe('people in the heat', () => {
  it('need drinks in proportion to their number, and a whole cup for a part of an interval', () => {
    fc.assert(
      fc.property(whole(10, 60), whole(1, 16), whole(1, 40), (minutes, hours, people) => {
        const at = (n: number) =>
          drinkingWater.compute({ every: minutes * 60, hours: hours * hour, people: n })
        expect(numberOf(at(2 * people).crew)).toBeCloseTo(2 * numberOf(at(people).crew), 9)
        expect(numberOf(at(1).cups) * minutes).toBeGreaterThanOrEqual(hours * 60)
        expect((numberOf(at(1).cups) - 1) * minutes).toBeLessThan(hours * 60)
      }),
      FEW,
    )
  })
})

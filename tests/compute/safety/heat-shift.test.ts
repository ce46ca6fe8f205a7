import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { heatShift } from '../../../src/compute/safety/heat-shift.ts'
import { numberOf } from '../support/answers.ts'
import { FEW, whole } from '../support/realistic.ts'

const hour = 3600

describe('people in the heat', () => {
  it('work longer on each day than on the one before, never longer than the shift, and longer if they are used to heat', () => {
    fc.assert(
      fc.property(whole(1, 16), (hours) => {
        const at = heatShift.compute({ shift: hours * hour })
        const fresh = [at.first, at.second, at.third, at.fourth, at.fifth].map(numberOf)
        const used = [
          at.returning,
          at['returning-second'],
          at['returning-third'],
          at['returning-fourth'],
        ].map(numberOf)
        for (const days of [fresh, used]) expect(days).toEqual([...days].sort((a, b) => a - b))
        used.forEach((time, day) => expect(time).toBeGreaterThan(fresh[day] ?? Infinity))
        expect(fresh.at(-1)).toBe(hours * hour)
        expect(used.at(-1)).toBe(hours * hour)
      }),
      FEW,
    )
  })
})

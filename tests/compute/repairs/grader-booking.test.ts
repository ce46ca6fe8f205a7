import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { graderBooking } from '../../../src/compute/repairs/grader-booking.ts'
import { expectRefused, numberOf } from '../support/answers.ts'

const h = 3600
const longest = 10 * h

describe('days of the grader', () => {
  it('are two for eleven hours of taking off and five of shaping, of which one is booked', () => {
    // 11 + 5 = 16 h; at most 10 h a day: two days, the first of them a day before shaping.
    const answers = graderBooking.compute({ takeOff: 11 * h, shaping: 5 * h, longest, booked: 1 })
    expect(answers).toEqual({ work: 16 * h, days: 2, lead: 86_400, more: 1 })
  })

  it('are one, begun on the day of shaping, where all fits into it', () => {
    const answers = graderBooking.compute({ takeOff: 5 * h, shaping: 5 * h, longest, booked: 1 })
    expect(answers.days).toBe(1)
    expect(answers.lead).toBe(0)
    expectRefused([answers.more], /booked-enough/)
  })

  it('are not called missing where nobody has given any', () => {
    const answers = graderBooking.compute({ takeOff: 30 * h, shaping: 5 * h, longest, booked: 0 })
    expect(answers.days).toBe(4)
    expectRefused([answers.more], /not-booked/)
  })

  it('hold all the work, and one less would not', () => {
    const minutes = fc.integer({ min: 1, max: 6000 })
    fc.assert(
      fc.property(minutes, minutes, (takeOff, shaping) => {
        const x = { takeOff: takeOff * 60, shaping: shaping * 60, longest, booked: 0 }
        const days = numberOf(graderBooking.compute(x).days)
        expect(days * longest).toBeGreaterThanOrEqual(x.takeOff + x.shaping)
        expect((days - 1) * longest).toBeLessThan(x.takeOff + x.shaping)
      }),
    )
  })
})

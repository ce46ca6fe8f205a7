import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { formatExact } from '../../../src/model/quantity/format-exact.ts'
import type { Locale } from '../../../src/model/quantity/format-quantity.ts'

const us: Locale = { system: 'us', currency: 'USD' }

describe('formatExact', () => {
  it("keeps the trade's form where that changes nothing", () => {
    expect(formatExact(0.03175, 'depth', us)).toBe('1 1/4 in')
  })

  it('works out to the minute what is printed in quarters of an hour', () => {
    // A plan says from 3:30 PM; its formula ends at 3:42 PM.
    expect(formatExact((15 * 60 + 42) * 60, 'quarterClock', us)).toBe('3:42 PM')
  })

  it('gives four digits where rounding would change a sum', () => {
    expect(formatExact(0.0333, 'depth', us)).toBe('1.311 in')
  })

  it('tells in prose what a ruler shows, in sixteenths, where nobody typed it so', () => {
    // 0.943 × 16 = 15.1; 0.307 × 16 = 4.9
    const inch = 0.0254
    expect(formatExact(0.943 * inch, 'depth', us, 'prose')).toBe('15/16 in')
    expect(formatExact(0.307 * inch, 'fineDepth', us, 'prose')).toBe('5/16 in')
    expect(formatExact(0.943 * inch, 'depth', us, 'typed')).toBe('0.943 in')
    // Thinner than a sixteenth is nothing to measure with a ruler, and a grain is no depth.
    expect(formatExact(0.02 * inch, 'depth', us, 'prose')).toBe('0.02 in')
    expect(formatExact(0.0787 * inch, 'grain', us, 'prose')).toBe('0.0787 in')
  })

  it('prints no inch in prose that is no sixteenth', () => {
    fc.assert(
      fc.property(fc.double({ min: 1 / 16, max: 12, noNaN: true }), (inches) => {
        for (const kind of ['depth', 'fineDepth', 'dent'] as const) {
          const text = formatExact(inches * 0.0254, kind, us, 'prose')
          expect(text).toMatch(/^(?:\d+ )?(?:\d+|\d+\/(?:2|4|8|16)) in$/)
        }
      }),
    )
  })
})

import { describe, expect, it } from 'vitest'
import { formatExact } from '../../../src/model/quantity/format-exact.ts'
import type { Locale } from '../../../src/model/quantity/format-quantity.ts'

const us: Locale = { system: 'us', currency: 'USD' }

describe('formatExact', () => {
  it("keeps the trade's form where that changes nothing", () => {
    expect(formatExact(0.03175, 'depth', us)).toBe('1 1/4 in')
  })

  it('gives four digits where rounding would change a sum', () => {
    expect(formatExact(0.0333, 'depth', us)).toBe('1.311 in')
  })
})

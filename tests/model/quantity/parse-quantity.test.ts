import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { parseQuantity } from '../../../src/model/quantity/parse-quantity.ts'

const si = (text: string): number => {
  const parsed = parseQuantity(text)
  if (!parsed.ok) throw new Error(`${text}: ${parsed.fault.message}`)
  return parsed.quantity.si
}

const faultOf = (text: string) => {
  const parsed = parseQuantity(text)
  return parsed.ok ? undefined : parsed.fault
}

describe('parseQuantity', () => {
  // Exact definitions: NIST SP 811 (2008), Appendix B.
  it.each([
    ['2 1/2 in', 0.0635],
    ['2-1/2 in', 0.0635],
    ['2½ in', 0.0635],
    ['1/4 in', 0.00635],
    ['60 ft', 18.288],
    ['452 ft 6 in', 137.922],
    ['1 furlong', 201.168],
    ['5/8 mi', 1005.84],
    ['2,000 gal', 7.570823568],
    ['120 gal/min', 0.007570823568],
    ['3 mph', 1.34112],
    ['1.4 t/m3', 1400],
    ['100 lb/ft3', 1601.846337396014],
    ['100 lb/cu ft', 1601.846337396014],
    ['1 acre', 4046.8564224],
    ['2 %', 0.02],
    ['30 deg', Math.PI / 6],
    ['85 °F', 302.5944444444],
    ['-3 °C', 270.15],
    ['1 h 25 min', 5100],
    ['$90/h', 0.025],
  ])('reads "%s"', (text, expected) => {
    expect(si(text)).toBeCloseTo(expected, 9)
  })

  it('refuses a number without its unit', () => {
    expect(faultOf('3')?.code).toBe('quantity/no-unit')
  })

  it('points at an unknown unit and suggests a near one', () => {
    expect(faultOf('120 galons/min')).toMatchObject({
      code: 'quantity/unknown-unit',
      at: 4,
      length: 6,
      hint: 'did you mean "gallons"?',
    })
  })

  it.each(['', 'abc', '1,2 ft', '1/0 in', '3 ft 2 lb', '--3 in', '3 in in', 'NaN in', '1e999 in'])(
    'refuses "%s"',
    (text) => {
      expect(faultOf(text)).toBeDefined()
    },
  )

  it('reads back every sixteenth of an inch that it could print', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1600 }), (sixteenths) => {
        const whole = Math.floor(sixteenths / 16)
        const rest = sixteenths % 16
        const text = `${whole > 0 ? `${whole} ` : ''}${rest > 0 ? `${rest}/16 ` : ''}in`
        expect(si(text)).toBeCloseTo((sixteenths / 16) * 0.0254, 12)
      }),
      { numRuns: 60 },
    )
  })
})

import { describe, expect, it } from 'vitest'
import { parseQuantity } from '../../../src/model/quantity/parse-quantity.ts'
import { slipOf } from '../../../src/model/quantity/slips.ts'
import { foot, inch } from '../../../src/model/quantity/units.ts'

describe('slipOf', () => {
  it.each([
    ['12,5 ft', 'write 12.5 ft; a comma parts thousands, as in 2,640 ft'],
    [
      '12-14 ft',
      'write one value, such as 13 ft, the middle; what it varies between can stand behind #',
    ],
    [
      '2 to 3 in',
      'write one value, such as 2.5 in, the middle; what it varies between can stand behind #',
    ],
    [
      '3/4–1 1/4 in',
      'write one value, such as 1 in, the middle; what it varies between can stand behind #',
    ],
    [
      '3/4 to 1 1/4 in',
      'write one value, such as 1 in, the middle; what it varies between can stand behind #',
    ],
    [
      '1–1 1/2 in',
      'write one value, such as 1 1/4 in, the middle; what it varies between can stand behind #',
    ],
    [
      '1" to 1 1/2"',
      'write one value, such as 1 1/4", the middle; what it varies between can stand behind #',
    ],
    [
      '3 or 4 days',
      'write one value, such as 3.5 days, the middle; what it varies between can stand behind #',
    ],
    ['6 in to 1 ft', 'write one value; what it varies between can stand behind #'],
    [
      '3.95/gal',
      'write $3.95/gal; the sign of the money stands first, or a unit behind the number',
    ],
    ['80 x 120 x 6 ft', 'write what it holds: 57,600 ft3'],
    ['10 x 4 ft', 'write the one number that is asked for'],
    ['1300+ gal', 'write 1300 gal; that it is more can stand behind #'],
    ['less than 60 ft', 'write 60 ft alone; that it is not exact can stand behind #'],
    ['2 640 ft', 'write 2,640 ft'],
    ['“2,640 ft”', 'leave them out, or type straight ones: "2,640 ft"'],
  ])('tells what to type for %s', (typed, hint) => {
    expect(slipOf(typed)?.hint).toBe(hint)
    const read = parseQuantity(typed)
    expect(read.ok ? undefined : read.fault.hint).toBe(hint)
  })

  it.each(['2 1/2 in', '2-1/2 in', '2,640 ft', '1 h 25 min', '3/8 in', '120 gal/min', '-2 °C'])(
    'leaves %s alone, which can be read',
    (typed) => expect(parseQuantity(typed).ok).toBe(true),
  )
})

describe('feet and inches', () => {
  it.each(['9\'6"', '9\' 6"', '9 ft 6 in', '9 ft. 6 in.'])('are read from %s', (typed) => {
    const read = parseQuantity(typed)
    expect(read.ok && read.quantity.si).toBeCloseTo(9 * foot + 6 * inch, 12)
  })
})

import { convert, type Unit } from 'convert'
import suncalc from 'suncalc'
import { describe, expect, it } from 'vitest'
import { sunEvent } from '../../src/compute/daylight/sun.ts'
import { parseQuantity } from '../../src/model/quantity/parse-quantity.ts'

// Independent libraries of others, asked the same questions. They are no sources; where they
// differ, both are looked at.

describe('second opinion on units: convert (MIT)', () => {
  const cases: readonly [string, Unit, Unit][] = [
    ['ft', 'ft', 'm'],
    ['in', 'in', 'm'],
    ['yd', 'yd', 'm'],
    ['mi', 'mi', 'm'],
    ['ft2', 'square foot', 'square meter'],
    ['acre', 'acre', 'square meter'],
    ['ft3', 'cubic foot', 'cubic meter'],
    ['yd3', 'cubic yard', 'cubic meter'],
    ['gal', 'US liquid gallon', 'cubic meter'],
    ['lb', 'lb', 'kg'],
    ['ton', 'short ton', 'kg'],
    ['psi', 'psi', 'pascal'],
  ]
  // Its table holds the same exact definitions; what is left is the rounding of its own factors.
  it.each(cases)('1 %s', (ours, from, to) => {
    const read = parseQuantity(`1 ${ours}`)
    const theirs = convert(1, from as 'ft').to(to as 'm')
    expect(read.ok && read.quantity.si / theirs).toBeCloseTo(1, 6)
  })
})

describe('second opinion on sunrise and sunset: suncalc (BSD-2-Clause)', () => {
  // suncalc rounds its constants and its refraction; both say so themselves, so three minutes are
  // allowed.
  it.each([
    [40.83, -89.08, '2027-08-03', -5],
    [52.4, -1.9, '2027-06-14', 1],
    [-37.8, 145, '2027-12-20', 11],
    [60.2, 24.9, '2027-03-20', 2],
  ])('at %f, %f on %s', (latitude, longitude, date, zone) => {
    const at = (side: -1 | 1) => sunEvent({ date, latitude, longitude, zone }, side)?.minutes
    const theirs = suncalc.getTimes(
      new Date(Date.parse(`${date}T12:00:00Z`) - zone * 3_600_000),
      latitude,
      longitude,
    )
    const minutes = (at: Date): number =>
      (at.getTime() - Date.parse(`${date}T00:00:00Z`)) / 60_000 + zone * 60
    expect(Math.abs((at(-1) ?? 0) - minutes(theirs.sunrise))).toBeLessThan(3)
    expect(Math.abs((at(1) ?? 0) - minutes(theirs.sunset))).toBeLessThan(3)
  })
})

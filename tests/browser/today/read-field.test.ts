import { describe, expect, it } from 'vitest'
import { readField, readTime } from '../../../src/browser/today/read-field.ts'
import type { DayFact } from '../../../src/model/manual/today.ts'

const fact = (kind: DayFact['kind'], range: readonly [number, number], step = 1): DayFact => ({
  path: 'a.b',
  label: 'it',
  kind,
  step,
  range,
  said: '',
})

const moisture = fact('fineShare', [0, 0.4], 0.5)
const depth = fact('depth', [0, 0.3048], 0.25)
const heat = fact('temperature', [233.15, 327.6], 2)
const trucks = fact('count', [1, 20])
const store = fact('waterVolume', [0, 40_000], 5000)

/** Inch and US liquid gallon: National Institute of Standards and Technology, Handbook 44, appendix C. */
const inch = 0.0254
const gallon = 0.003785411784

describe('what somebody types', () => {
  it.each([
    ['4', moisture, 0.04],
    ['4 %', moisture, 0.04],
    ['4,5', moisture, 0.045],
    ['2 1/2', depth, 2.5 * inch],
    ['2½ in', depth, 2.5 * inch],
    ['40 mm', depth, 0.04],
    ['91', heat, (91 - 32) / 1.8 + 273.15],
    ['33 °C', heat, 306.15],
    ['2', trucks, 2],
    ['250,000', store, 250_000 * gallon],
    ['1,000 m3', store, 1000],
  ] as const)('is read as people say it: %s', (text, of, si) => {
    const read = readField(text, of, 'us')
    expect(read.ok && read.si).toBeCloseTo(si, 9)
  })

  it.each([
    ['', moisture, 'unread'],
    ['wet', moisture, 'unread'],
    ['4 in', moisture, 'unread'],
    ['60', moisture, 'outside'],
    ['−1', moisture, 'outside'],
    ['1.5', trucks, 'whole'],
    ['21', trucks, 'outside'],
  ] as const)('is no value: %s', (text, of, why) => {
    expect(readField(text, of, 'us')).toEqual({ ok: false, why })
  })

  it('is in the units of the manual where none are said', () => {
    expect(readField('40', depth, 'metric')).toEqual({ ok: true, si: 0.04 })
  })
})

describe('a time of day', () => {
  const noon = 12 * 3600
  it.each([
    ['5:10 PM', noon, '17:10'],
    ['5:10', noon, '17:10'],
    ['5:10', 3600, '5:10'],
    ['11:30', 22 * 3600, '23:30'],
    ['1', noon, '13:00'],
    ['3 pm', 0, '15:00'],
    ['17:10', 0, '17:10'],
    ['05:10', noon, '5:10'],
    ['12:20', noon, '12:20'],
  ] as const)('without its half of the day is the next one: %s after %d s', (text, after, is) => {
    const [h = 0, m = 0] = is.split(':').map(Number)
    expect(readTime(text, after)).toBe(h * 3600 + m * 60)
  })

  it.each(['', 'soon', '25:10', '5:70', '4 in', '1 h 25 min'])('is none: %s', (text) => {
    expect(readTime(text, 0)).toBeUndefined()
  })
})

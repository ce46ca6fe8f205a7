import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { readTimeOfDay, timeOfDay } from '../../src/model/time-of-day.ts'

const text = (minutes: number, system: 'us' | 'metric'): string => {
  const { number, unit } = timeOfDay(minutes, system)
  return `${number} ${unit}`.trimEnd()
}

describe('a time of day', () => {
  it.each([
    ['13:30', 13.5 * 3600],
    ['00:05', 300],
    ['1:30 PM', 13.5 * 3600],
    ['1:30 p.m.', 13.5 * 3600],
    ['12:00 PM', 12 * 3600],
    ['12:15am', 900],
  ])('is read from %s', (written, seconds) => {
    expect(readTimeOfDay(written)).toBe(seconds)
  })

  it.each(['24:00', '13:00 PM', '0:30 AM', '1:60', '1 h', '13.30', ''])(
    'is not read from "%s"',
    (written) => {
      expect(readTimeOfDay(written)).toBeUndefined()
    },
  )

  it('is said as people of the place say it', () => {
    expect([0, 725, 810, 1439].map((m) => text(m, 'us'))).toEqual([
      '12:00 AM',
      '12:05 PM',
      '1:30 PM',
      '11:59 PM',
    ])
    expect([0, 810].map((m) => text(m, 'metric'))).toEqual(['0:00', '13:30'])
    expect(text(24 * 60 + 5, 'us')).toBe('12:05 AM')
  })

  it('is read again as it was printed, in both habits', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1439 }), fc.boolean(), (minutes, us) => {
        expect(readTimeOfDay(text(minutes, us ? 'us' : 'metric'))).toBe(minutes * 60)
      }),
    )
  })
})

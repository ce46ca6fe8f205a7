import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  addDays,
  dayNumber,
  dayOf,
  dayOfYear,
  isDay,
  isZone,
  weekdayOf,
  workingDaysOff,
  zoneOffset,
} from '../../src/model/day.ts'

describe('days', () => {
  it('are counted over the ends of months and years, leap years included', () => {
    expect(addDays('2027-03-01', -1)).toBe('2027-02-28')
    expect(addDays('2028-02-28', 1)).toBe('2028-02-29')
    expect(addDays('2027-12-31', 1)).toBe('2028-01-01')
    expect(addDays('2027-08-03', -20.6)).toBe('2027-07-13')
  })

  it('have the number of the day that a number names', () => {
    expect(dayNumber('1970-01-01')).toBe(0)
    // 30 years with 7 leap days among them.
    expect(dayNumber('2000-01-01')).toBe(30 * 365 + 7)
    for (const date of ['1970-01-01', '2028-02-29', '2101-12-31'])
      expect(dayOf(dayNumber(date))).toBe(date)
  })

  it('have a place in their year', () => {
    expect(dayOfYear('2027-01-01')).toBe(1)
    expect(dayOfYear('2027-12-31')).toBe(365)
    expect(dayOfYear('2028-12-31')).toBe(366)
  })

  it('leave whole working days between a call and the work, over weekends too', () => {
    // Tuesday 20 July 2027: Thursday, Friday and Monday lie between it and Wednesday the 14th.
    expect(workingDaysOff('2027-07-20', -3)).toBe('2027-07-14')
    expect(workingDaysOff('2027-07-14', 3)).toBe('2027-07-20')
    // Called on a Saturday, the days are Monday to Wednesday.
    expect(workingDaysOff('2027-07-24', 3)).toBe('2027-07-29')
    expect(workingDaysOff('2027-07-23', 0)).toBe('2027-07-26')
  })

  it('come back over the same working days, and never land on a weekend', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 40_000 }),
        fc.integer({ min: 0, max: 14 }),
        (n, days) => {
          const later = workingDaysOff(dayOf(n), days)
          expect([1, 2, 3, 4, 5]).toContain(weekdayOf(later))
          const between = Array.from({ length: dayNumber(later) - n - 1 }, (_, i) =>
            dayOf(n + 1 + i),
          )
          const working = between.filter((d) => ![0, 6].includes(weekdayOf(d)))
          expect(working).toHaveLength(days)
          // Back from there it is the last working day that leaves as many.
          expect(workingDaysOff(later, -days) >= dayOf(n) || weekdayOf(dayOf(n)) % 6 === 0).toBe(
            true,
          )
        },
      ),
    )
  })

  // ISO 8601: 2027-01-04 is a Monday.
  it('have a place in their week, Sunday first', () => {
    expect(weekdayOf('2027-01-04')).toBe(1)
    expect(weekdayOf('2027-01-03')).toBe(0)
  })

  it('exist, or are refused', () => {
    expect(['2027-02-28', '2028-02-29', '1900-01-01', '2199-12-31'].every(isDay)).toBe(true)
    expect(['0000-01-01', '1899-12-31', '2200-01-01', '9999-12-31'].some(isDay)).toBe(false)
    expect(
      ['2027-02-29', '2027-13-01', '2027-6-1', '20270601', '2027-06-01T00:00', ''].filter(isDay),
    ).toEqual([])
  })
})

describe('clocks', () => {
  it('are ahead of or behind Universal Time as their zone says on that day', () => {
    expect(zoneOffset('2027-08-03', 'America/New_York')).toBe(-4 * 3600)
    expect(zoneOffset('2027-12-03', 'America/New_York')).toBe(-5 * 3600)
    expect(zoneOffset('2027-08-03', 'Asia/Kolkata')).toBe(5.5 * 3600)
    expect(zoneOffset('2027-12-03', 'Europe/London')).toBe(0)
  })

  it('stand in zones that the list has, and in no others', () => {
    expect(isZone('Europe/Berlin')).toBe(true)
    expect(isZone('Europe/Larkmoor')).toBe(false)
  })
})

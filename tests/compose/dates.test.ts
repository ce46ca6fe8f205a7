import { describe, expect, it } from 'vitest'
import {
  type Dating,
  dateWithYear,
  dayAndMonth,
  monthName,
  placeInWeek,
  shortDate,
  weekdaysOf,
} from '../../src/compose/dates.ts'
import type { UnitSystem } from '../../src/model/quantity/kinds.ts'
import { loadSmall } from '../support/small.ts'

async function dating(system: UnitSystem): Promise<Dating> {
  const { library } = await loadSmall()
  if (!library) throw new Error('no library')
  return { locale: { system, currency: 'USD' }, library }
}

describe('dates', () => {
  // ISO 8601: 2027-08-03 is a Tuesday.
  it('are written as the country does, in the words of the library', async () => {
    const [us, metric] = [await dating('us'), await dating('metric')]
    expect([shortDate('2027-08-03', us), shortDate('2027-08-03', metric)]).toEqual([
      'Tue, Aug 3',
      'Tue 3 Aug',
    ])
    expect([dayAndMonth('2027-09-30', us), dayAndMonth('2027-09-30', metric)]).toEqual([
      'Sep 30',
      '30 Sep',
    ])
    expect(dateWithYear('2027-08-03', us)).toBe('Tue, Aug 3, 2027')
    expect([monthName(1, us), monthName(12, us)]).toEqual(['January', 'December'])
  })

  it('refuse a month that there is not', async () => {
    const us = await dating('us')
    expect(() => monthName(13, us)).toThrow('no month 13')
  })
})

describe('weeks', () => {
  // ISO 8601: 2027-01-04 is a Monday.
  it('begin on Sunday in the United States and on Monday elsewhere', async () => {
    expect([placeInWeek('2027-01-04', 'us'), placeInWeek('2027-01-04', 'metric')]).toEqual([1, 0])
    expect([placeInWeek('2027-01-03', 'us'), placeInWeek('2027-01-03', 'metric')]).toEqual([0, 6])
    expect(weekdaysOf(await dating('metric'))).toEqual([
      'Mon',
      'Tue',
      'Wed',
      'Thu',
      'Fri',
      'Sat',
      'Sun',
    ])
  })
})

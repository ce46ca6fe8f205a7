import { describe, expect, it } from 'vitest'
import { endOf, hoursOf } from '../../../src/compose/calendars/hours.ts'

describe('hours of a day', () => {
  it('are moments where the zone is known, by its clock in summer and in winter', () => {
    // Chicago is five hours behind Universal Time in August and six in January (IANA time zones).
    expect(hoursOf('2027-08-03', 17.5 * 3600, 22 * 3600, 'America/Chicago')).toEqual({
      kind: 'hours',
      from: '2027-08-03T22:30:00Z',
      to: '2027-08-04T03:00:00Z',
    })
    expect(hoursOf('2027-01-03', 0, 3600, 'America/Chicago')).toMatchObject({
      from: '2027-01-03T06:00:00Z',
    })
  })

  it('stay times of the place where nobody has said its zone', () => {
    expect(hoursOf('2027-08-03', 17.5 * 3600, 25 * 3600, undefined)).toEqual({
      kind: 'hours',
      from: '2027-08-03T17:30:00',
      to: '2027-08-04T01:00:00',
    })
  })
})

describe('the end', () => {
  it('of a whole day is that of the day', () => {
    expect(endOf({ kind: 'day', date: '2027-08-03' })).toBe(Date.UTC(2027, 7, 4))
  })

  it('of hours is the last of them', () => {
    expect(endOf(hoursOf('2027-08-03', 0, 3600, undefined))).toBe(Date.UTC(2027, 7, 3, 1))
  })
})

import { describe, expect, it } from 'vitest'
import { fairYear, isYearless, withYear } from '../../src/validate/fair-year.ts'
import { dateMeant } from '../../src/validate/schema-advice/date-meant.ts'

describe('a day without a year', () => {
  it('is told from one that has it, and from what is no day', () => {
    for (const text of ['Aug 13', 'August 13th', '13 Aug', '13. August', '8/13'])
      expect(isYearless(text), text).toBe(true)
    for (const text of ['Aug 13, 2027', '13', '8/13/2027', '2027-08-13', '3/4 in'])
      expect(isYearless(text), text).toBe(false)
    expect(withYear('8/13', '2027')).toBe('8/13/2027')
  })

  it('is of the year of the fair, where all race days have the same', () => {
    const on = (...dates: unknown[]) => ({ 'race-days': dates.map((date) => ({ date })) })
    expect(fairYear(on('2027-08-03', 'Aug 4'))).toBe('2027')
    expect(fairYear(on('2027-12-31', '2028-01-01'))).toBeUndefined()
    for (const data of [on(), on(undefined, 3), {}, null, undefined, { 'race-days': 'soon' }])
      expect(fairYear(data)).toBeUndefined()
  })

  it('is offered in that year, and asked about where there is none or it can be read in two ways', () => {
    expect(dateMeant('Aug 13', '2027')).toBe('write year, month, day: 2027-08-13')
    expect(dateMeant('13 August', '2027')).toBe('write year, month, day: 2027-08-13')
    expect(dateMeant('8/13', '2027')).toBe('write year, month, day: 2027-08-13')
    expect(dateMeant('8/3', '2027')).toContain('2027-08-03, or 2027-03-08')
    expect(dateMeant('Aug 13')).toContain('the year is missing')
    expect(dateMeant('Smarch 13', '2027')).toContain('the year is missing')
  })
})

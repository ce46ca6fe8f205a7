import { describe, expect, it } from 'vitest'
import { dayStyle, readDay } from '../../../src/validate/imports/day-style.ts'

describe('a date', () => {
  it.each([
    '2027-08-03',
    '2027/8/3',
    '2027.08.03',
    '3.8.2027',
    '03.08.27',
    '3 Aug 2027',
    '3-Aug-27',
    'August 3, 2027',
    'Aug. 3rd 2027',
    'Tue, 3 August 2027',
    'Tuesday, August 3, 2027',
    '2027-08-03 00:00',
    '2027-08-03T00:00:00',
  ])('is read in one way only as %s', (text) => {
    for (const style of ['ask', 'month-first', 'day-first'] as const)
      expect(readDay(text, style)).toBe('2027-08-03')
  })

  it('has its month first where units are those of the United States, or the column shows it', () => {
    expect(readDay('8/3/2027', dayStyle(['8/3/2027'], '', 'us'))).toBe('2027-08-03')
    expect(readDay('8/3/27', dayStyle(['8/3/27', '8/31/27'], '', 'metric'))).toBe('2027-08-03')
    expect(readDay('3/8/2027', dayStyle(['3/8/2027', '31/8/2027'], '', 'metric'))).toBe(
      '2027-08-03',
    )
    expect(readDay('3/8/2027', dayStyle(['3/8/2027'], 'dd/mm/yyyy', 'us'))).toBe('2027-08-03')
    expect(readDay('8/3/2027', dayStyle(['8/3/2027'], 'M/D/Y', 'metric'))).toBe('2027-08-03')
  })

  it('is asked for where nobody can tell, and where the column goes against itself or its place', () => {
    const asking = [
      dayStyle(['3/8/2027'], '', 'metric'),
      dayStyle(['3/8/2027'], '', undefined),
      dayStyle(['3/8/2027', '31/8/2027'], '', 'us'),
      dayStyle(['3/8/2027', '31/8/2027', '8/31/2027'], '', 'metric'),
    ]
    expect(asking).toEqual(['ask', 'ask', 'ask', 'ask'])
    expect(readDay('3/8/2027', 'ask')).toEqual({
      message: '"3/8/2027" can be 2027-03-08 or 2027-08-03',
      hint: 'write the one that it is; or say above the column which stands first: date (m/d/y) or date (d/m/y)',
    })
    expect(readDay('31/8/2027', 'ask')).toBe('2027-08-31')
    expect(readDay('4/4/2027', 'ask')).toBe('2027-04-04')
  })

  it.each(['2027-02-30', '2/30/2027', 'soon', '32.1.2027', '3 Foo 2027', '', '12', '2027'])(
    'is none in %j',
    (text) => {
      expect(readDay(text, 'month-first')).toMatchObject({ message: `"${text}" is no date` })
    },
  )
})

import { describe, expect, it } from 'vitest'
import { readDailyLog } from '../../../src/validate/imports/daily-log-table.ts'
import { placesOf } from '../../support/bad-input.ts'

const read = (...lines: string[]) =>
  readDailyLog({ path: 'log.csv', text: lines.join('\n') }, { date: '2027-06-14' })

describe('a daily log', () => {
  it('becomes days with words and numbers, the oldest first; what was not written stays open', () => {
    const { value, problems } = read(
      'date,use,loads,stored (gal),work,seen,tomorrow,by',
      '2027-06-13,racing,14,"280,000","raked, watered",cuppy at the pole,,Somebody',
      '2027-06-12,closed,,,,,,',
    )
    expect(problems).toEqual([])
    expect(value?.map((d) => d.date)).toEqual(['2027-06-12', '2027-06-13'])
    expect(value?.[1]).toMatchObject({ use: 'racing', loads: 14, work: 'raked, watered' })
    // 1 US gallon is 231 cubic inches (NIST Handbook 44, appendix C).
    expect(value?.[1]?.stored).toBeCloseTo(280_000 * 231 * 0.0254 ** 3, 6)
    expect(value?.[0]).toMatchObject({ loads: undefined, work: undefined })
  })

  it('is refused with a day twice, half a load, or loads that nobody drives', () => {
    expect(placesOf(read('date,loads', '2027-06-13,8', '2027-06-13,9').problems)).toEqual([
      'ref/duplicate-id 3:1',
    ])
    expect(placesOf(read('date,loads', '2027-06-13,8.5').problems)).toEqual([
      'quantity/number 2:12',
    ])
    expect(placesOf(read('date,loads', '2027-06-13,999').problems)).toEqual(['quantity/range 2:12'])
  })
})

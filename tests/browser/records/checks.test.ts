import { describe, expect, it } from 'vitest'
import { faultsOf, isToCome } from '../../../src/browser/records/checks.ts'
import { depthName } from '../../../src/model/records.ts'

const usual = { high: [280, 305], depth: [0.019, 0.045] } as const

const found = (day: Readonly<Record<string, string>>) =>
  faultsOf(day, usual).map(({ name, is }) => [name, is])

describe('what is asked about', () => {
  it('is what cannot be read, cannot be, or is not usual here', () => {
    expect(found({ rain: 'some in' })).toEqual([['rain', 'number']])
    expect(found({ rain: '99 in' })).toEqual([['rain', 'outside']])
    expect(found({ high: '100 °F' })).toEqual([['high', 'unusual']])
    expect(found({ high: '80 °F', low: '60 °F', rain: '0 in' })).toEqual([])
  })

  it('is a high below the low, and weights that no sample can have', () => {
    expect(found({ high: '60 °F', low: '80 °F' })).toEqual([['high', 'upside']])
    const sample = (wet: string, dry: string, jar: string) => ({
      'moisture-log.row-1.wet': wet,
      'moisture-log.row-1.dry': dry,
      'moisture-log.row-1.jar': jar,
    })
    expect(found(sample('110', '112', '20'))).toEqual([['moisture-log.row-1.wet', 'weights']])
    expect(found(sample('110', '19', '20'))).toEqual([['moisture-log.row-1.dry', 'weights']])
    expect(found(sample('much', '19', '1'))).toEqual([['moisture-log.row-1.wet', 'number']])
    expect(found(sample('110', '104', '20'))).toEqual([])
  })

  it('is a depth far from those of its day', () => {
    const day = Object.fromEntries(
      [0, 100, 200, 300, 400].flatMap((station) =>
        [1.5, 9].map((offset) => [depthName(station, offset), '1 1/4 in']),
      ),
    )
    expect(found(day)).toEqual([])
    expect(found({ ...day, [depthName(200, 9)]: '4 in' })).toEqual([[depthName(200, 9), 'apart']])
  })

  it('is a day to come; where the clock is ahead by one it may be so', () => {
    expect(isToCome('2027-06-14', '2027-06-14')).toBe(false)
    expect(isToCome('2027-06-15', '2027-06-14')).toBe(false)
    expect(isToCome('2027-06-17', '2027-06-14')).toBe(true)
  })
})

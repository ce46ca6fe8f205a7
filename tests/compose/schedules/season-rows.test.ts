import { describe, expect, it } from 'vitest'
import { seasonDayRows, seasonWeekRows } from '../../../src/compose/schedules/season-rows.ts'
import type { LoggedDay } from '../../../src/model/daily-log.ts'
import { contextFor, halfMile } from '../support/context.ts'

const day = (date: string, use: string, loads?: number, seen?: string): LoggedDay => ({
  date,
  use,
  loads,
  stored: undefined,
  work: undefined,
  seen,
  tomorrow: undefined,
})

const log = [
  day('2027-06-05', 'training', 8),
  day('2027-06-06', 'closed'),
  day('2027-06-07', 'racing', 12, 'cuppy'),
]
const at = { file: 'facility.yaml', line: 1, column: 1, length: 1 }
const moisture = [{ by: '', at, days: [{ date: '2027-06-05', values: [0.05, 0.09, 0.06] }] }]

describe('the season so far', () => {
  it('adds up each week of the log, which begins on Sunday in the United States', async () => {
    const rows = seasonWeekRows(await contextFor(halfMile, { 'daily-log': [log], moisture }))
    expect(rows.map((r) => [r[0], r[1], r[3], r[5]])).toEqual([
      ['Sun, May 30', 'training 1', '8', '6 %'],
      ['Sun, Jun 6', 'closed 1, racing 1', '12', ''],
    ])
  })

  it('says nothing where nothing was written', async () => {
    const context = await contextFor(halfMile)
    expect(seasonWeekRows(context)).toEqual([])
    expect(seasonDayRows(context)).toEqual([])
  })

  it('tells the last days in their own words', async () => {
    const rows = seasonDayRows(await contextFor(halfMile, { 'daily-log': [log] }))
    expect(rows.at(-1)).toEqual(['Mon, Jun 7', 'racing', '', '', 'cuppy', ''])
  })
})

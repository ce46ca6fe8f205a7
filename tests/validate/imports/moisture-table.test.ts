import { describe, expect, it } from 'vitest'
import { readMoisture } from '../../../src/validate/imports/moisture-table.ts'
import { placesOf } from '../../support/bad-input.ts'

const at = { file: 'facility.yaml', line: 1, column: 1, length: 1 }
const read = (...lines: string[]) =>
  readMoisture(
    { path: 'moisture.csv', text: lines.join('\n') },
    { by: 'somebody' },
    { at, date: '2027-06-14' },
  )

describe('a table of moisture samples', () => {
  it('becomes shares by day, the oldest first, with or without places', () => {
    const { value, problems } = read(
      'date,station (ft),offset (ft),moisture (%)',
      '2027-06-13,0,5,7.5',
      '2027-06-12,600,5,5',
      '2027-06-13,,,6 %',
    )
    expect(problems).toEqual([])
    expect(value?.days).toEqual([
      { date: '2027-06-12', values: [0.05] },
      { date: '2027-06-13', values: [0.075, 0.06] },
    ])
    expect(read('date,moisture (%)', '2027-06-13,8').value?.days[0]?.values).toEqual([0.08])
  })

  it('is refused with its faults: what cannot be, a day to come, a column nobody knows', () => {
    expect(placesOf(read('date,moisture (%)', '2027-06-13,55').problems)).toEqual([
      'quantity/range 2:12',
    ])
    expect(placesOf(read('date,moisture (%)', '2027-07-13,5').problems)).toEqual([
      'facility/odd 2:1',
    ])
    expect(placesOf(read('date,moisture (%),wet', '2027-06-13,5,x').problems)).toEqual([
      'schema/unknown-key 1:19',
    ])
  })
})

import { describe, expect, it } from 'vitest'
import { composeHeatTable } from '../../../src/compose/charts/heat-table.ts'
import { contextFor, halfMile } from '../support/context.ts'

const august =
  'race-days: [{ date: 2027-08-03, first-post: "13:00", races: 10 }]\nclimate: [{ month: 8, tmax: 84 °F, tmin: 62 °F, humidity: 60 % }]\n'

describe('the table of heat', () => {
  it('reads as the weather service’s chart, with a level that rises with heat and humidity', async () => {
    const table = composeHeatTable(await contextFor(`${halfMile}${august}`))
    const column = table?.humidities.indexOf('60 %') ?? -1
    const row = table?.rows.find((r) => r.temperature === '92 °F')
    // National Weather Service heat index chart: 92 °F at 60 % feels like 105 °F.
    expect(row?.cells[column]).toEqual({ text: '105 °F', level: 3 })
    for (const r of table?.rows ?? []) {
      const levels = r.cells.map((c) => c.level)
      expect(levels).toEqual([...levels].sort((a, b) => a - b))
    }
  })

  it('leaves what lies beyond the chart without a number, at the highest level', async () => {
    const table = composeHeatTable(await contextFor(`${halfMile}${august}`))
    const cells = table?.rows.flatMap((r) => r.cells) ?? []
    expect(cells.filter((c) => c.text === '–').every((c) => c.level === 4)).toBe(true)
    expect(cells.at(-1)).toEqual({ text: '–', level: 4 })
  })

  it('is not there where no climate is given', async () => {
    expect(composeHeatTable(await contextFor(halfMile))).toBeUndefined()
  })
})

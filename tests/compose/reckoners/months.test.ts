import { describe, expect, it } from 'vitest'
import { smallManual } from '../../support/small.ts'

describe('water by month', () => {
  it('gives for the month of the fair what all other figures give', async () => {
    const { manual } = await smallManual()
    const fair = manual.charts.waterMonths?.filter((m) => m.own) ?? []
    expect(fair.map((m) => [m.name, m.text])).toEqual([
      ['August', manual.quantities['demand.water']?.text],
    ])
    expect(manual.reckoners.find((r) => r.id === 'months')?.rows.find((r) => r.own)?.cells[1]).toBe(
      fair[0]?.text,
    )
  })
})

import { describe, expect, it } from 'vitest'
import { smallManual } from '../../support/small.ts'

describe('a ready reckoner', () => {
  it('has a row for each value of its input, the one of the facility among them', async () => {
    const { manual } = await smallManual()
    const table = manual.reckoners.find((r) => r.id === 'round')
    expect(table?.rows.map((r) => r.cells.length)).toEqual([2, 2])
    const loads = table?.rows.map((r) => Number(r.cells[1])) ?? []
    expect(loads[1]).toBeGreaterThan(loads[0] ?? Infinity)
  })

  it('stops at the moisture that is wanted here, where nothing is missing', async () => {
    const { manual } = await smallManual()
    const table = manual.reckoners.find((r) => r.id === 'moisture')
    const last = table?.rows.at(-1)
    expect(table?.rows.length).toBeLessThanOrEqual(6)
    expect(last?.head).toBe(manual.quantities['cushion.moisture.target']?.text)
    expect(Number.parseFloat(last?.cells[0] ?? '')).toBe(0)
    expect(Number.parseFloat(table?.rows[0]?.cells[0] ?? '')).toBeGreaterThan(0)
  })
})

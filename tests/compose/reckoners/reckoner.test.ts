import { describe, expect, it } from 'vitest'
import { demoManual, demos } from '../../support/demo.ts'

describe.each(demos)('reckoners of %s', (id) => {
  it('stop at the moisture that is wanted here, where nothing is missing', async () => {
    const { manual } = await demoManual(id)
    const table = manual.reckoners.find((r) => r.id === 'moisture')
    if (!table) return
    const last = table.rows.at(-1)
    expect(table.rows.length).toBeLessThanOrEqual(6)
    expect(last?.head).toBe(manual.quantities['cushion.moisture.target']?.text)
    expect(Number.parseFloat(last?.cells[0] ?? '')).toBe(0)
    expect(Number.parseFloat(table.rows[0]?.cells[0] ?? '')).toBeGreaterThan(0)
  })
})

import { describe, expect, it } from 'vitest'
import { renderDrawings } from '../../../../src/render/drawings/drawings.ts'
import { smallManual } from '../../../support/small.ts'
import { boxes } from '../../support/svg-boxes.ts'

describe('the chart of water by month', () => {
  it('draws columns as high as the water of their months', async () => {
    const { manual, words } = await smallManual()
    const months = manual.charts.waterMonths ?? []
    const columns = boxes(renderDrawings(manual, words)['water-months']?.at('page') ?? '', 'column')
    expect(columns).toHaveLength(months.length)
    const most = Math.max(...months.map((m) => m.water))
    const highest = Math.max(...columns.map((c) => c.height))
    for (const [i, m] of months.entries())
      expect((columns[i]?.height ?? 0) / highest).toBeCloseTo(m.water / most, 3)
    expect(months.filter((m) => m.own)).toHaveLength(1)
  })
})

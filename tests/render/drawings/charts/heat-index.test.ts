import { describe, expect, it } from 'vitest'
import { renderDrawings } from '../../../../src/render/drawings/drawings.ts'
import { smallManual } from '../../../support/small.ts'
import { boxes } from '../../support/svg-boxes.ts'

describe('the chart of heat', () => {
  it('sorts every field of felt temperature into its level, never lower where it is hotter or moister', async () => {
    const { manual, words } = await smallManual()
    const rows = manual.charts.heat?.rows ?? []
    const svg = renderDrawings(manual, words)['heat-index']?.at('page') ?? ''
    for (const level of [1, 2, 3, 4])
      expect(boxes(svg, `level-${level}`), String(level)).toHaveLength(
        rows.flatMap((r) => r.cells).filter((c) => c.level === level).length + 1,
      )
    for (const [j, row] of rows.entries())
      for (const [i, c] of row.cells.entries()) {
        expect(c.level).toBeGreaterThanOrEqual(row.cells[i - 1]?.level ?? 1)
        expect(c.level).toBeGreaterThanOrEqual(rows[j - 1]?.cells[i]?.level ?? 1)
      }
  })
})

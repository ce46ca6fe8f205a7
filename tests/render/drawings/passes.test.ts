import { describe, expect, it } from 'vitest'
import { drawingNamed, renderDrawings } from '../../../src/render/drawings/drawings.ts'
import { smallManual } from '../../support/small.ts'
import { boxes } from '../support/svg-boxes.ts'

describe('strips', () => {
  it('are as many as the figure says, within the track', async () => {
    const { manual, words } = await smallManual()
    const drawings = renderDrawings(manual, words)
    expect(Object.keys(manual.charts.passes)).not.toHaveLength(0)
    for (const [figure, pattern] of Object.entries(manual.charts.passes)) {
      const strips = boxes(
        drawingNamed(drawings, `passes-${figure === 'spray' ? 'water' : figure}`)?.svg ?? '',
        'strip',
      )
      const expected = manual.figures.find((f) => f.id === `${figure}.strips`)?.value
      expect(expected?.ok && expected.si).toBe(strips.length)
      const across =
        Math.max(...strips.map((s) => s.y + s.height)) - Math.min(...strips.map((s) => s.y))
      expect((strips[0]?.height ?? 0) / across).toBeCloseTo(pattern.covers / pattern.across, 2)
    }
  })
})

import { describe, expect, it } from 'vitest'
import { smallManual } from '../../../support/small.ts'

describe('the chart of drying', () => {
  it('lets the cushion dry through the moisture wanted to dust on the days of the worksheet', async () => {
    const { manual } = await smallManual()
    const curve = manual.charts.drying
    const moistureAt = (time: number): number => {
      const after = curve?.points.findIndex((p) => p.time >= time) ?? -1
      const [a, b] = [curve?.points[after - 1], curve?.points[after]]
      return a && b
        ? a.moisture + ((b.moisture - a.moisture) * (time - a.time)) / (b.time - a.time)
        : Number.NaN
    }
    expect(moistureAt(curve?.workable ?? 0)).toBeCloseTo(curve?.target ?? 0, 3)
    expect(moistureAt(curve?.dust ?? 0)).toBeCloseTo(curve?.dusty ?? 0, 3)
    expect(curve?.points[0]?.moisture).toBe(curve?.held)
  })
})

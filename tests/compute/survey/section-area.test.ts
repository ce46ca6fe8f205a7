import { describe, expect, it } from 'vitest'
import {
  coordinateArea,
  levelSection,
  veeSection,
} from '../../../src/compute/survey/section-area.ts'

describe('areas', () => {
  it('of a level section without floor are those of a V', () => {
    expect(levelSection(0, 1.5, 4)).toBeCloseTo(veeSection(12, 4), 9)
  })

  it('by coordinates do not change when the figure is moved or gone around the other way', () => {
    const corners = [
      [0, 0],
      [30, 5],
      [40, 25],
      [10, 30],
    ] as const
    expect(coordinateArea(corners.map(([x, y]) => [x + 100, y - 70] as const))).toBeCloseTo(
      coordinateArea(corners),
      6,
    )
    expect(coordinateArea([...corners].reverse())).toBeCloseTo(coordinateArea(corners), 9)
  })
})

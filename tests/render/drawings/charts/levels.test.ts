import { describe, expect, it } from 'vitest'
import { renderDrawings } from '../../../../src/render/drawings/drawings.ts'
import { demoManual } from '../../../support/demo.ts'
import { bareFacility, manualOf, smallManual } from '../../../support/small.ts'

describe('sections from levels', () => {
  it('stand for every station of the survey, with each reading above or below the slope wanted', async () => {
    const { manual, words } = await smallManual()
    const { levels } = manual.charts
    const rows = manual.schedules.find((p) => p.id === 'level-survey')?.tables[0]?.rows ?? []
    expect(levels.map((s) => [s.station, s.found, s.wanted])).toEqual(
      rows.map((r) => r.slice(0, 3)),
    )
    for (const s of levels) {
      // Through the mean level: what is above at one side is missing at the other.
      expect(s.points.reduce((sum, p) => sum + p.above, 0)).toBeCloseTo(0, 9)
      for (const p of s.points) expect(p.offset).toBeLessThanOrEqual(s.width)
    }
    const drawing = renderDrawings(manual, words)['levels']
    for (const s of levels)
      expect(drawing?.alt).toContain(`${s.station}: found: ${s.found}, wanted: ${s.wanted}`)
    expect(drawing?.at('page').match(/<circle/g)).toHaveLength(
      levels.flatMap((s) => s.points).length,
    )
  })

  it('frame what lies higher than the cushion is deep, since a cut would go into the base', async () => {
    const { manual, words } = await demoManual('larkmoor')
    const deep = manual.charts.levels.map((s) =>
      s.points.filter((p) => p.above > manual.geometry.cushionDepth),
    )
    expect(deep.flat().length).toBeGreaterThan(0)
    const drawing = renderDrawings(manual, words)['levels']
    const stations = deep.filter((points) => points.length > 0).length
    expect(drawing?.at('page').match(/>In a frame: do not cut\.</g)).toHaveLength(stations)
    expect(drawing?.alt).toContain('In a frame: do not cut. +6 13/16 in, +2 5/16')
    expect(drawing?.alt).toContain('before the engineer has looked')
  })

  it('are left out where nobody has levelled', async () => {
    const { manual, words } = await manualOf(bareFacility)
    expect(renderDrawings(manual, words)['levels']).toBeUndefined()
  })

  it('want half of each slope where straight and turn meet, at the start of the home straight as everywhere', async () => {
    const { manual } = await smallManual()
    const wanted = manual.charts.levels[0]?.wanted
    const { crossFallStraights, crossFallTurns } = manual.geometry
    // Printed to a tenth of a per cent.
    expect(
      Math.abs(Number.parseFloat(wanted ?? '') - ((crossFallStraights + crossFallTurns) / 2) * 100),
    ).toBeLessThanOrEqual(0.051)
  })
})

import { describe, expect, it } from 'vitest'
import { composeLevelSections } from '../../../src/compose/charts/level-sections.ts'
import type { Survey } from '../../../src/validate/imports/survey-table.ts'
import { contextFor, halfMile } from '../support/context.ts'

/** A level survey with an even fall outward, and a bump at the rail of stations by their number. */
function levels(stations: number, bump: (station: number) => number): Survey {
  const readings = Array.from({ length: stations }, (_, i) => i).flatMap((i) =>
    [1, 5, 9, 13].map((offset) => ({
      station: i * 10,
      offset,
      value: 0.02 * offset + (offset === 1 ? bump(i) : 0),
    })),
  )
  const at = { file: 'facility.yaml', line: 1, column: 1, length: 1 }
  const file = { path: 'levels.csv', text: '' }
  return {
    of: 'surface-level',
    by: 'D. O.',
    at,
    days: [{ date: '2027-06-01', readings }],
    file,
    rows: [],
  }
}

describe('sections across the track', () => {
  it('are those with the most to grade where there are more than a page holds, in their order', async () => {
    const surveys = [levels(20, (i) => (i % 2 === 0 ? 0.05 + i / 1000 : 0))]
    const sections = composeLevelSections(await contextFor(halfMile, { surveys }))
    expect(sections).toHaveLength(12)
    const stations = sections.map((s) => Number.parseFloat(s.station.replace(',', '')))
    expect(stations).toEqual([...stations].sort((a, b) => a - b))
    // 180 m is 590.6 ft, printed to ten feet: the last of the even stations has the highest bump.
    expect(sections.map((s) => s.station)).toContain('590 ft')
  })

  it('show each reading above or below the wanted slope', async () => {
    const surveys = [levels(4, () => 0)]
    // At 30 m the straight is clear of the turn, and 2 % is wanted where the file says nothing.
    const section = composeLevelSections(await contextFor(halfMile, { surveys })).at(-1)
    expect(section?.points.map((p) => p.offset)).toEqual([1, 5, 9, 13])
    for (const p of section?.points ?? []) expect(Math.abs(p.above)).toBeLessThan(1e-9)
  })

  it('are none without a survey', async () => {
    expect(composeLevelSections(await contextFor(halfMile))).toEqual([])
  })
})

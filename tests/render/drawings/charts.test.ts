import { describe, expect, it } from 'vitest'
import type { Manual } from '../../../src/model/manual.ts'
import { type DrawingName, renderDrawings } from '../../../src/render/drawings/drawings.ts'
import { demoManual, demos } from '../../support/demo.ts'
import { textBoxes } from '../support/svg-boxes.ts'

const charts: readonly DrawingName[] = [
  'water-months',
  'heat-index',
  'race-interval',
  'drying',
  'passes-grade',
  'passes-harrow',
  'passes-screen',
  'passes-drum',
  'passes-condition',
  'passes-water',
]

describe.each(demos)('charts of %s', (id) => {
  it('keep every text inside the view box', async () => {
    const { manual, words } = await demoManual(id)
    const drawings = renderDrawings(manual, words)
    for (const name of charts.filter((c) => c in drawings)) {
      const svg = drawings[name]?.svg ?? ''
      const [width, height] = (/viewBox="0 0 ([\d.]+) ([\d.]+)"/.exec(svg) ?? [])
        .slice(1)
        .map(Number)
      for (const t of textBoxes(svg)) {
        expect(t.left, `${name}: ${t.words}`).toBeGreaterThanOrEqual(0)
        expect(t.right, `${name}: ${t.words}`).toBeLessThanOrEqual(width ?? 0)
        expect(t.top, `${name}: ${t.words}`).toBeGreaterThanOrEqual(0)
        expect(t.bottom, `${name}: ${t.words}`).toBeLessThanOrEqual(height ?? 0)
      }
    }
  })
  it('say their numbers in the text alternative', async () => {
    const { manual, words } = await demoManual(id)
    const drawings = renderDrawings(manual, words)
    for (const name of charts.filter((c) => c in drawings)) {
      expect(drawings[name]?.alt.length, name).toBeGreaterThan(
        drawings[name]?.caption.length ?? Infinity,
      )
      expect(drawings[name]?.alt, name).toMatch(/\d/)
      expect(drawings[name]?.svg, name).toMatch(/^<svg [^>]*role="img" aria-label="[^"]*\d/)
    }
  })
})

describe('a chart', () => {
  it('is left out where its inputs are missing', async () => {
    const { manual, words } = await demoManual('larkmoor')
    const none: Manual['charts'] = {
      waterMonths: undefined,
      heat: undefined,
      interval: undefined,
      drying: undefined,
      countdown: undefined,
      levels: [],
      passes: {},
    }
    const drawings = renderDrawings({ ...manual, charts: none }, words)
    for (const name of charts) expect(Object.keys(drawings)).not.toContain(name)
    const poor = (await demoManual('brambleford')).manual.charts
    expect([poor.waterMonths, poor.heat, poor.drying]).toEqual([undefined, undefined, undefined])
  })
})

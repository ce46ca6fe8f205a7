import { describe, expect, it } from 'vitest'
import type { Manual } from '../../../src/model/manual.ts'
import { renderDrawings } from '../../../src/render/drawings/drawings.ts'
import { bareFacility, manualOf, smallManual } from '../../support/small.ts'
import { chartNames, textsOutside } from '../support/svg-boxes.ts'

describe('charts', () => {
  it('keep every text inside the view box', async () => {
    const { manual, words } = await smallManual()
    const drawings = renderDrawings(manual, words)
    for (const name of chartNames.filter((c) => c in drawings))
      expect(textsOutside(drawings[name]?.at('page') ?? ''), name).toEqual([])
  })

  it('say their numbers in the text alternative', async () => {
    const { manual, words } = await smallManual()
    const drawings = renderDrawings(manual, words)
    for (const name of chartNames.filter((c) => c in drawings)) {
      expect(drawings[name]?.alt, name).toMatch(/\d/)
      expect(drawings[name]?.at('page'), name).toMatch(/^<svg [^>]*role="img" aria-label="[^"]*\d/)
    }
  })
})

describe('a chart', () => {
  it('is left out where its inputs are missing', async () => {
    const { manual, words } = await smallManual()
    const none: Manual['charts'] = {
      waterMonths: undefined,
      heat: undefined,
      interval: undefined,
      drying: undefined,
      countdown: undefined,
      levels: [],
      rolling: undefined,
      washout: undefined,
      passes: {},
    }
    const drawings = renderDrawings({ ...manual, charts: none }, words)
    for (const name of chartNames) expect(Object.keys(drawings)).not.toContain(name)
    const poor = (await manualOf(bareFacility)).manual.charts
    expect([poor.waterMonths, poor.heat, poor.drying]).toEqual([undefined, undefined, undefined])
  })
})

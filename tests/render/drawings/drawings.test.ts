import { describe, expect, it } from 'vitest'
import { renderDrawings } from '../../../src/render/drawings/drawings.ts'
import { smallManual } from '../../support/small.ts'

describe('drawings', () => {
  it('are whole, labelled and free of NaN', async () => {
    const { manual, words } = await smallManual()
    const drawings = renderDrawings(manual, words)
    for (const name of ['plan', 'sections', 'washout', 'pullback', 'ridge'])
      expect(Object.keys(drawings)).toContain(name)
    for (const [name, d] of Object.entries(drawings)) {
      expect(d.at('page'), name).not.toMatch(/NaN|undefined|Infinity/)
      expect(d.at('page')).toMatch(/^<svg [^>]*role="img" aria-label="[^"]+"/)
      expect(d.caption).not.toBe('')
    }
    expect('cushion' in drawings).toBe(manual.cushionMap !== undefined)
    expect('rolling' in drawings).toBe(manual.machines.some((m) => m.can.includes('roll-tires')))
  })

  it('escape names that people give', async () => {
    const { manual, words } = await smallManual()
    const marks = [
      { kind: 'gate' as const, name: '<script>"x"&', station: 10, offset: 20, gate: undefined },
    ]
    expect(
      renderDrawings({ ...manual, geometry: { ...manual.geometry, marks } }, words)['plan']?.at(
        'page',
      ),
    ).toContain('&lt;script&gt;&quot;x&quot;&amp;')
  })
})

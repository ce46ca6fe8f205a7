import { describe, expect, it } from 'vitest'
import { type DrawingName, renderDrawings } from '../../../../src/render/drawings/drawings.ts'
import { demoManual, demos } from '../../../support/demo.ts'
import { smallManual } from '../../../support/small.ts'

const nameOf = (figure: string): DrawingName =>
  `passes-${({ spray: 'water', 'grade-band': 'blade' } as Record<string, string>)[figure] ?? figure}` as DrawingName

const sizesIn = (svg: string): readonly number[] =>
  [...svg.matchAll(/font-size="([\d.]+)"/g)].map((m) => Number(m[1]))

const widthOf = (svg: string): number => Number(/viewBox="0 0 ([\d.]+) /.exec(svg)?.[1])

describe('patterns on the oval', () => {
  it('draw as many laps as the figure says strips, and name all of its laps', async () => {
    for (const id of demos) {
      const { manual, words } = await demoManual(id)
      const drawings = renderDrawings(manual, words)
      for (const [figure, pattern] of Object.entries(manual.charts.passes)) {
        const drawing = drawings[nameOf(figure)]
        if (pattern.perStrip === 1 && !pattern.half) {
          const strips = manual.figures.find((f) => f.id === `${figure}.strips`)?.value
          expect(strips?.ok && strips.si).toBe(pattern.strips)
        }
        for (const svg of [drawing?.svg ?? '', drawing?.narrow ?? '']) {
          expect(svg.match(/class="lap"/g), `${id} ${figure}`).toHaveLength(pattern.strips)
          const laps = manual.quantities[`${figure}.laps`]
          expect(svg).toContain(`${laps?.ok ? laps.text : '?'}</text>`)
        }
      }
    }
  })

  it('say where to start, how far each lap moves and which gate is next, in words too', async () => {
    const { manual, words } = await demoManual('larkmoor')
    const { alt } = renderDrawings(manual, words)['passes-harrow'] ?? { alt: '' }
    for (const said of ['Gate C', 'start at the rail', '9 ft', '8', 'Gate A'])
      expect(alt).toContain(said)
  })

  it('lift or shut the tool where the last lap ends, not at the gate half a lap later', async () => {
    const { manual, words } = await demoManual('larkmoor')
    const drawings = renderDrawings(manual, words)
    const rested = [
      ['passes-water', 'spray off'],
      ['passes-grade', 'blade up'],
    ] as const
    for (const [name, off] of rested)
      expect(drawings[name]?.svg).toMatch(new RegExp(`ends here</text><text[^>]*>${off}</text>`))
    const { svg } = drawings['passes-harrow'] ?? { svg: '' }
    expect(svg).toMatch(/>out: Gate A<\/text><text[^>]*>keep rolling</)
  })

  it('say so where no gate is known', async () => {
    const { manual, words } = await demoManual('brambleford')
    const drawing = renderDrawings(manual, words)['passes-harrow']
    expect(drawing?.svg).toContain('your gate')
    expect(drawing?.svg).not.toContain('>in: ')
  })

  it('are the mirror image where horses go clockwise', async () => {
    const { manual, words } = await smallManual()
    const geometry = { ...manual.geometry, direction: 'clockwise' as const }
    const turned = renderDrawings({ ...manual, geometry }, words)['passes-harrow']?.svg ?? ''
    expect(turned).toContain('scale(1 -1)')
    expect(turned).not.toMatch(/NaN|undefined/)
  })

  it('have no type under 8 points where they are printed, across a page or in a column', async () => {
    for (const id of demos) {
      const { manual, words } = await demoManual(id)
      for (const [name, d] of Object.entries(renderDrawings(manual, words))) {
        if (!/^(passes|rolling)/.test(name)) continue
        expect(widthOf(d.svg), name).toBe(482)
        expect(Math.min(...sizesIn(d.svg)), name).toBeGreaterThanOrEqual(8)
        // The column of an A4 sheet is 172 points wide.
        const shown = 172 / widthOf(d.narrow)
        expect(Math.min(...sizesIn(d.narrow)) * shown, name).toBeGreaterThanOrEqual(8)
      }
    }
  })
})

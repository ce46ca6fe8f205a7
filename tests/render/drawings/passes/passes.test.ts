import { describe, expect, it } from 'vitest'
import { type DrawingName, renderDrawings } from '../../../../src/render/drawings/drawings.ts'
import { demoManual, demos } from '../../../support/demo.ts'
import { smallManual } from '../../../support/small.ts'

const nameOf = (figure: string): DrawingName =>
  `passes-${({ spray: 'water', 'grade-band': 'blade' } as Record<string, string>)[figure] ?? figure}` as DrawingName

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
        for (const svg of [drawing?.at('page') ?? '', drawing?.at('side') ?? '']) {
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
      expect(drawings[name]?.at('page')).toMatch(
        new RegExp(`ends here</text><text[^>]*>${off}</text>`),
      )
    expect(drawings['passes-harrow']?.at('page')).toMatch(
      />out: Gate A<\/text><text[^>]*>keep rolling</,
    )
  })

  it('say so where no gate is known', async () => {
    const { manual, words } = await demoManual('brambleford')
    const drawing = renderDrawings(manual, words)['passes-harrow']
    expect(drawing?.at('page')).toContain('your gate')
    expect(drawing?.at('page')).not.toContain('>in: ')
  })

  it('are the mirror image where horses go clockwise', async () => {
    const { manual, words } = await smallManual()
    const geometry = { ...manual.geometry, direction: 'clockwise' as const }
    const turned = renderDrawings({ ...manual, geometry }, words)['passes-harrow']?.at('page') ?? ''
    expect(turned).toContain('scale(1 -1)')
    expect(turned).not.toMatch(/NaN|undefined/)
  })
})

import { describe, expect, it } from 'vitest'
import { margins } from '../../../src/render/binder/page-rules.ts'
import { renderDrawings } from '../../../src/render/drawings/drawings.ts'
import { type DrawingSize, drawingWidths } from '../../../src/render/drawings/sizes.ts'
import { demoManual, demos } from '../../support/demo.ts'
import { faultsOf, textsOf } from '../support/sized-drawing.ts'

/** Across a page of A4, a page of the field book on letter, the side column of a sheet on A4. */
const rooms: Readonly<Record<DrawingSize, number>> = {
  page: 595 - 72 * (margins.bound + margins.outer),
  column: 72 * (5.5 - 0.96),
  side: (595 - 72) * 0.33,
}

const sizes = Object.keys(drawingWidths) as DrawingSize[]

describe.each(demos)('drawings of %s', (id) => {
  it('have no letters under 8 points, none outside and none on others', async () => {
    const { manual, words } = await demoManual(id)
    for (const [name, d] of Object.entries(renderDrawings(manual, words)))
      for (const size of sizes) {
        const svg = d.at(size)
        expect(faultsOf(svg, rooms[size]), `${name}, ${size}`).toEqual([])
        expect(svg).toContain(`viewBox="0 0 ${drawingWidths[size]} `)
        expect(svg).not.toMatch(/NaN|undefined|Infinity/)
        expect(textsOf(svg).length).toBeGreaterThan(0)
      }
  })

  it('are drawn the same way twice', async () => {
    const { manual, words } = await demoManual(id)
    const [once, again] = [renderDrawings(manual, words), renderDrawings(manual, words)]
    for (const [name, d] of Object.entries(once))
      expect(d.at('side')).toBe(again[name as keyof typeof again]?.at?.('side'))
  })
})

import { describe, expect, it } from 'vitest'
import { paperSize, sheetPapers } from '../../src/model/papers.ts'
import { textArea } from '../../src/render/binder/page-rules.ts'
import { renderDrawings } from '../../src/render/drawings/drawings.ts'
import { demoManual, demos } from '../support/demo.ts'

/** Nobody reads smaller type in a drawing, points; a hair less for sums that do not come out even. */
const least = 7.99

const pointsInMillimeter = 72 / 25.4

/** Across a page of the binder, on the narrower paper; in half of it; beside the steps of a sheet. */
const page = Math.min(...(['letter', 'a4'] as const).map((p) => textArea(p).width)) * 72
const half = 3.1 * 72
// A third of a sheet between margins of half an inch, as its style says.
const side = Math.min(...sheetPapers.map((p) => paperSize(p)[0] * pointsInMillimeter - 72)) * 0.33

/** The smallest type of a drawing that is printed at this width. */
function smallest(svg: string, width: number): number {
  const units = Number(/viewBox="0 0 ([\d.]+) /.exec(svg)?.[1])
  const sizes = [...svg.matchAll(/font-size="([\d.]+)"/g)].map((m) => Number(m[1]))
  return (Math.min(...sizes) * width) / units
}

describe.each(demos)('type in the drawings of %s', (id) => {
  it('is 8 points or more in the binder', async () => {
    const { manual, words } = await demoManual(id)
    for (const [name, d] of Object.entries(renderDrawings(manual, words)))
      expect(smallest(d.svg, d.small ? half : page), name).toBeGreaterThan(least)
  })

  it('is 8 points or more beside the steps of a sheet', async () => {
    const { manual, words } = await demoManual(id)
    const drawings = Object.entries(renderDrawings(manual, words))
    const shown = new Set(manual.procedures.map((p) => p.sheet.drawing))
    for (const [name, d] of drawings.filter(([name]) => shown.has(name)))
      expect(smallest(d.at?.('side') ?? d.narrow, side), name).toBeGreaterThan(least)
  })
})

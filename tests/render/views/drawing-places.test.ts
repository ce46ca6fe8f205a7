import { describe, expect, it } from 'vitest'
import { renderBinder } from '../../../src/render/binder/render-binder.ts'
import { renderDrawings } from '../../../src/render/drawings/drawings.ts'
import { renderSite } from '../../../src/render/site/render-site.ts'
import { createDrawingPrinter, drawingPlace } from '../../../src/render/views/drawing-places.ts'
import { assetsFor } from '../../support/demo.ts'
import { smallManual } from '../../support/small.ts'

const idsOf = (text: string): readonly string[] =>
  [...text.matchAll(/\sid="([^"]*)"/g)].map((m) => m[1] ?? '')

describe('places in the procedures', () => {
  it('are ids of the site, in the page of their procedure', async () => {
    const { manual, words } = await smallManual()
    const files = new Map(
      renderSite(manual, await assetsFor(words, 'linked')).map((f) => [f.path, f.data]),
    )
    const ids = new Map(
      manual.procedures.map((p) => [
        p.id,
        new Set(idsOf(files.get(`procedures/${p.id}.html`) ?? '')),
      ]),
    )
    for (const { term, procedures, places } of manual.termIndex)
      for (const place of places)
        expect(
          procedures.some((p) => ids.get(p)?.has(place)),
          `${term}: ${place}`,
        ).toBe(true)
  })

  it('are ids of the binder, each once', async () => {
    const { manual, words } = await smallManual()
    const ids = renderBinder(manual, await assetsFor(words, 'linked')).parts.flatMap((p) =>
      idsOf(p.body),
    )
    for (const place of new Set(manual.termIndex.flatMap((t) => t.places)))
      expect(
        ids.filter((i) => i === place),
        place,
      ).toHaveLength(1)
    for (const p of manual.procedures)
      for (const m of p.methods)
        for (const s of m.steps) expect(ids).toContain(`${p.id}-${m.id}-step-${s.number}`)
  })
})

describe('drawings', () => {
  it('have an id where they are printed first, and only there', async () => {
    const { manual, words } = await smallManual()
    const draw = createDrawingPrinter(renderDrawings(manual, words), 'paper')
    const [first, second, other, none] = ['plan', 'plan', 'washout', 'nothing'].map((d) =>
      draw(d).toString(),
    )
    expect(first).toContain(`id="${drawingPlace('plan')}"`)
    expect(second).not.toContain('drawing-plan"')
    expect(other).toContain(`id="${drawingPlace('washout')}"`)
    expect(none).toBe('')
  })
})

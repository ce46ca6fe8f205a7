import { describe, expect, it } from 'vitest'
import { renderBinder } from '../../../src/render/binder/render-binder.ts'
import { renderDrawings } from '../../../src/render/drawings/drawings.ts'
import { drawingHomes } from '../../../src/render/drawings/homes.ts'
import { renderSheets } from '../../../src/render/sheets/render-sheets.ts'
import { renderSite } from '../../../src/render/site/render-site.ts'
import {
  citeBeside,
  citeInBinder,
  createDrawingPrinter,
  drawingPlace,
  drawingsOnPage,
} from '../../../src/render/views/drawing-places.ts'
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
    const ids = new Set(
      manual.procedures.flatMap((p) => idsOf(files.get(`procedures/${p.id}.html`) ?? '')),
    )
    for (const { term, places } of manual.termIndex)
      for (const { place, main } of places)
        if (!main) expect(ids.has(place), `${term}: ${place}`).toBe(true)
  })

  it('are ids of the binder, each once', async () => {
    const { manual, words } = await smallManual()
    const ids = renderBinder(manual, await assetsFor(words, 'linked')).parts.flatMap((p) =>
      idsOf(p.body),
    )
    for (const place of new Set(manual.termIndex.flatMap((t) => t.places.map((p) => p.place))))
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

  it('bear one number and caption in binder, sheets and site', async () => {
    const { manual, words } = await smallManual()
    const assets = await assetsFor(words, 'linked')
    const { number, caption } = words.drawings['passes-harrow'] ?? {}
    const figure = `<figcaption><b>Drawing ${number}.</b> ${caption}</figcaption>`
    const binder = renderBinder(manual, assets).parts.map((p) => p.body)
    expect(binder.filter((body) => body.includes(figure))).toHaveLength(1)
    const page = renderSite(manual, assets).find((f) => f.path === 'procedures/harrow.html')
    expect(String(page?.data)).toContain(figure)
    const plan = `<b>Drawing ${words.drawings['plan']?.number}.</b>`
    const sheet = renderSheets(manual, assets)
      .sheets.map((sheet) => sheet())
      .find((s) => s.id === 'harrow')
    expect(sheet?.drawings.map((d) => d.body).join()).toContain(plan)
  })

  it('are cited by the step that needs them, with the way to where they stand', async () => {
    const { manual, words } = await smallManual()
    const drawings = renderDrawings(manual, words)
    const binder = citeInBinder(drawings, drawingHomes(manual), words, 'harrow')
    const said = (name: string) => binder(name).toString()
    expect(said('passes-harrow')).toMatch(/href="#drawing-passes-harrow">Drawing \d+</)
    expect(said('plan')).toMatch(/>Drawing 1, at the front</)
    expect(said('cushion')).toMatch(/>Drawing \d+, in [A-Z][^<]+</)
    expect(
      citeInBinder(drawings, drawingHomes(manual), words, 'water')('passes-harrow').toString(),
    ).toMatch(/>Drawing \d+, in \d+\.\d+</)
    const procedure = (id: string) => {
      const found = manual.procedures.find((p) => p.id === id)
      if (!found) throw new Error(id)
      return found
    }
    const page = drawingsOnPage(drawings, manual, words, procedure('harrow'))
    const elsewhere = drawingsOnPage(drawings, manual, words, procedure('water'))
    expect(page.cite('passes-harrow').toString()).toMatch(/href="#drawing-passes-harrow"/)
    expect(elsewhere.cite('passes-harrow').toString()).toMatch(
      /href="\.\.\/procedures\/harrow\.html#drawing-passes-harrow">Drawing \d+, in /,
    )
    expect(page.cite('cushion').toString()).toMatch(/href="\.\.\/plans\/[^"]+#drawing-cushion"/)
    expect(page.draw('cushion').toString()).toBe('')
    expect(page.draw('plan').toString()).toBe('')
    expect(page.cite('plan').toString()).toMatch(/href="\.\.\/facility\.html#drawing-plan"/)
    expect(page.draw('passes-harrow').toString()).toContain('id="drawing-passes-harrow"')
    expect(page.draw('passes-harrow').toString()).toBe('')
    expect(elsewhere.draw('passes-harrow').toString()).toBe('')
    expect(citeBeside(drawings, 'plan')('plan').toString()).toContain('Drawing 1')
    expect(citeBeside(drawings, 'plan')('passes-harrow').toString()).toBe('')
  })
})

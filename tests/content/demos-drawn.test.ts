import { describe, expect, it } from 'vitest'
import { renderDrawings } from '../../src/render/drawings/drawings.ts'
import { contextOf, labelFaults } from '../render/support/plan-labels.ts'
import { chartNames, textsOutside } from '../render/support/svg-boxes.ts'
import { demoManual, demos } from '../support/demo.ts'

describe.each(demos)('drawings of %s', (id) => {
  it('are whole, labelled and free of NaN', async () => {
    const { manual, words } = await demoManual(id)
    for (const [name, d] of Object.entries(renderDrawings(manual, words))) {
      expect(d.at('page'), name).not.toMatch(/NaN|undefined|Infinity/)
      expect(d.at('page')).toMatch(/^<svg [^>]*role="img" aria-label="[^"]+"/)
      expect(d.caption).not.toBe('')
    }
  })

  it('tell in words what they show, with its readings', async () => {
    const { manual, words } = await demoManual(id)
    for (const [name, { alt, title, called }] of Object.entries(renderDrawings(manual, words)))
      expect(alt.length - title.length - called.length, name).toBeGreaterThan(20)
  })

  it('are cited by a step wherever a sheet shows one', async () => {
    const { manual } = await demoManual(id)
    for (const { id: name, sheet } of manual.procedures)
      if (sheet.drawing !== undefined)
        expect(
          sheet.groups.flatMap((g) => g.steps.map((s) => s.drawing)),
          name,
        ).toContain(sheet.drawing)
  })

  it('keep every text of a chart inside its view box', async () => {
    const { manual, words } = await demoManual(id)
    const drawings = renderDrawings(manual, words)
    for (const name of chartNames.filter((c) => c in drawings))
      expect(textsOutside(drawings[name]?.at('page') ?? ''), name).toEqual([])
  })

  it.each(['page', 'column', 'side'] as const)(
    'have no label on another in the plan: %s',
    async (which) => {
      const { manual, words } = await demoManual(id)
      expect(labelFaults(contextOf(manual, words), which)).toEqual([])
    },
  )
})

import { describe, expect, it } from 'vitest'
import type { ManualProcedure } from '../../../src/model/manual/procedure.ts'
import { leastCapitals } from '../../../src/model/papers.ts'
import { emergencySheet } from '../../../src/model/sheet-names.ts'
import { fitSheet } from '../../../src/print/sheets/fit-sheet.ts'
import { renderSheets } from '../../../src/render/sheets/render-sheets.ts'
import { assetsFor, demoManual, demos } from '../../support/demo.ts'
import { faultsInPage } from '../../support/measure-boxes.ts'
import { usePress } from '../../support/test-press.ts'

const press = usePress()

const length = (p: ManualProcedure): number =>
  p.sheet.groups
    .flatMap((g) => g.steps)
    .reduce((sum, s) => sum + s.do.length + (s.note?.length ?? 0), 0)

describe.each(demos)('posted sheets of %s', (id) => {
  it('for the emergency, the longest and the shortest procedure have no word cut off or on another, on every paper', async () => {
    const { manual, words } = await demoManual(id)
    const { papers, sheets } = renderSheets(manual, await assetsFor(words, 'inline'))
    const byLength = [...manual.procedures].sort((p, q) => length(p) - length(q))
    for (const wanted of [emergencySheet, byLength[0]?.id, byLength.at(-1)?.id]) {
      const sheet = sheets.find((s) => s.id === wanted)
      if (!sheet) throw new Error('no sheet')
      for (const paper of papers) {
        const faults = await press().run({ css: paper.css, body: sheet.body }, {}, async (page) => {
          await fitSheet(page, leastCapitals(paper.name), () => '30 ft (9 m)')
          return page.evaluate(faultsInPage, '.sheet')
        })
        expect(faults, `${sheet.id} on ${paper.name}`).toEqual([])
      }
    }
  })
})

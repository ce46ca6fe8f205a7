import { describe, expect, it } from 'vitest'
import type { ManualProcedure } from '../../../src/model/manual/procedure.ts'
import { leastCapitals } from '../../../src/model/papers.ts'
import { emergencySheet } from '../../../src/model/sheet-names.ts'
import { fitSheets, sheetsToFit } from '../../../src/print/sheets/fit-sheets.ts'
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
    const { papers, sheets: all } = renderSheets(manual, await assetsFor(words, 'inline'))
    const sheets = all.map((sheet) => sheet())
    const byLength = [...manual.procedures].sort((p, q) => length(p) - length(q))
    const wanted = [emergencySheet, byLength[0]?.id, byLength.at(-1)?.id]
    const body = sheetsToFit(sheets.filter((s) => wanted.includes(s.id)))
    for (const paper of papers) {
      const faults = await press().run({ css: paper.css, body }, {}, async (page) => {
        const fits = await fitSheets(page, leastCapitals(paper.name), () => '30 ft (9 m)')
        expect(fits.map((f) => f.id).sort()).toEqual(wanted.sort())
        return page.evaluate(faultsInPage, '.sheet')
      })
      expect(faults, paper.name).toEqual([])
    }
  })
})

describe('a document of sheets', () => {
  const page = (words: string): string =>
    `<section class="sheet"><div class="sheet-fit"><div class="columns"><div class="ways"><p style="font-size:1.2em">${words}</p></div></div><footer class="foot"><span data-reading-distance></span></footer></div></section>`
  const css =
    '.sheet{--fs:11pt;font-size:var(--fs);width:4in;height:5in;overflow:hidden}.sheet-fit{height:100%;overflow:hidden}.sheet p{margin:0}'
  const sheet = (id: string, ...words: readonly string[]) => ({
    id,
    pages: words.map(page),
    layouts: words.map((_, i) => ({ name: String(i), pages: [i] })),
    drawings: [],
  })
  const fitted = (sheets: readonly ReturnType<typeof sheet>[]) =>
    press().run({ css, body: sheetsToFit(sheets) }, {}, (p) => fitSheets(p, 4.5, () => '15 ft'))

  it('takes of each the first layout in which the steps are large enough, whatever stands beside it', async () => {
    const [short, long] = ['some words '.repeat(20), 'some words '.repeat(300)]
    const alone = await fitted([sheet('a', long, short)])
    const together = await fitted([sheet('b', short, long), sheet('a', long, short)])
    expect(alone.map((f) => f.layout)).toEqual(['1'])
    expect(together.map((f) => f.layout)).toEqual(['0', '1'])
    expect(together[1]).toEqual(alone[0])
  })

  it('is refused by the name of the sheet that does not fit at the smallest type', async () => {
    await expect(
      fitted([sheet('a', 'few'), sheet('b', 'too many words '.repeat(3000))]),
    ).rejects.toThrow('sheet b: too long at 7.5 pt')
  })
})

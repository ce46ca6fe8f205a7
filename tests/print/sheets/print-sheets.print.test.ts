import path from 'node:path'
import { beforeAll, describe, expect, it } from 'vitest'
import type { Manual } from '../../../src/model/manual.ts'
import { demoManual } from '../../support/demo.ts'
import { printedDemo, printedDemos } from '../../support/printed-demos.ts'
import { openPdf, pageTexts } from '../../support/read-pdf.ts'

/** Points. */
const sizes = { letter: [612, 792], tabloid: [792, 1224], a4: [595, 842], a3: [842, 1191] }

const closed = (text: string): string => text.replace(/\s/g, '')

describe.each(printedDemos)('posted sheets of %s', (id) => {
  let manual: Manual
  let folder: string

  beforeAll(async () => {
    ;({ manual } = await demoManual(id))
    folder = path.join((await printedDemo(id)).folder, 'sheets')
  })

  /** Ends of the names of files, by paper and ink. */
  const ends = (): readonly (readonly [keyof typeof sizes, string])[] =>
    manual.facility.sheetPapers.flatMap((paper, i) =>
      ['', '-black'].map((ink) => [paper, `${i === 0 ? '' : `-${paper}`}${ink}.pdf`] as const),
    )

  it('are one page for each procedure on every paper and in both inks, with all its steps', async () => {
    for (const [paper, end] of ends()) {
      for (const p of manual.procedures) {
        const pdf = await openPdf(path.join(folder, `${p.id}${end}`))
        expect(pdf.numPages, p.id).toBe(1)
        const { width, height } = (await pdf.getPage(1)).getViewport({ scale: 1 })
        expect([width, height].map(Math.round), `${p.id} on ${paper}`).toEqual(sizes[paper])
        const text = closed((await pageTexts(pdf)).join())
        expect(text, p.id).toContain(closed(p.title))
        for (const s of p.sheet.steps)
          expect(text, p.id).toContain(closed(s.do.replace(/\{[^}]*\}.*$/, '')))
        expect(text).toMatch(/Stepsreadwellto\d/)
      }
    }
  })

  it('have one for emergencies with everybody to call', async () => {
    for (const [, end] of ends()) {
      const pdf = await openPdf(path.join(folder, `emergency${end}`))
      expect(pdf.numPages).toBe(1)
      const text = (await pageTexts(pdf)).join()
      for (const c of [...manual.emergency.stops, ...manual.emergency.contacts])
        expect(text, c.role).toContain(c.phone)
      expect(text).toMatch(/Steps read well to \d/)
    }
  })

  it('come together in one file too', async () => {
    for (const [, end] of ends())
      expect((await openPdf(path.join(folder, `sheets${end}`))).numPages).toBe(
        manual.procedures.length + 1,
      )
  })
})

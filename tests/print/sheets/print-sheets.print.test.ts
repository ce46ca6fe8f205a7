import { readFile } from 'node:fs/promises'
import path from 'node:path'
import { beforeAll, describe, expect, it } from 'vitest'
import type { Manual } from '../../../src/model/manual.ts'
import { leastCapitals, type SheetPaper } from '../../../src/model/papers.ts'
import { emergencySheet } from '../../../src/model/sheet-names.ts'
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

  it('are a file for each procedure on every paper and in both inks, with all its steps', async () => {
    for (const [paper, end] of ends()) {
      for (const p of manual.procedures) {
        const pdf = await openPdf(path.join(folder, `${p.id}${end}`))
        expect(pdf.numPages, p.id).toBeLessThanOrEqual(7)
        const { width, height } = (await pdf.getPage(pdf.numPages)).getViewport({ scale: 1 })
        expect([width, height].map(Math.round), `${p.id} on ${paper}`).toEqual(sizes[paper])
        const text = closed((await pageTexts(pdf)).join())
        expect(text, p.id).toContain(closed(p.title))
        for (const s of p.sheet.groups.flatMap((g) => g.steps))
          expect(text, p.id).toContain(closed(s.do.replace(/\{[^}]*\}.*$/, '')))
        expect(text).toMatch(/Stepscanbereadfrom\d/)
      }
    }
  })

  it('have capitals of steps that are read from where people stand, on every paper', async () => {
    // ANSI Z535.2: reading distance is 300 times the height.
    const record = JSON.parse(await readFile(path.join(folder, '..', 'build.json'), 'utf8')) as {
      readonly sheets: readonly { id: string; paper: SheetPaper; capitals: number }[]
    }
    expect(record.sheets.length).toBe(
      (manual.procedures.length + 1) * manual.facility.sheetPapers.length,
    )
    expect(
      record.sheets.filter((s) => s.id !== emergencySheet && s.capitals < leastCapitals(s.paper)),
    ).toEqual([])
  })

  it('have one for emergencies with everybody to call', async () => {
    for (const [, end] of ends()) {
      const pdf = await openPdf(path.join(folder, `emergency${end}`))
      // On two pages where one could not be read from afar.
      expect([1, 2]).toContain(pdf.numPages)
      const text = (await pageTexts(pdf)).join()
      for (const c of [...manual.emergency.stops, ...manual.emergency.contacts])
        expect(text, c.role).toContain(c.phone)
      expect(text).toMatch(/Steps can be read from \d/)
    }
  })

  it('come together in one file too', async () => {
    for (const [, end] of ends()) {
      const names = ['emergency', ...manual.procedures.map((p) => p.id)]
      const single = await Promise.all(
        names.map(async (name) => (await openPdf(path.join(folder, `${name}${end}`))).numPages),
      )
      expect((await openPdf(path.join(folder, `sheets${end}`))).numPages).toBe(
        single.reduce((sum, pages) => sum + pages, 0),
      )
    }
  })
})

import { readFile } from 'node:fs/promises'
import path from 'node:path'
import type { PDFDocumentProxy } from 'pdfjs-dist/legacy/build/pdf.mjs'
import { beforeAll, describe, expect, it } from 'vitest'
import type { Manual } from '../../../src/model/manual.ts'
import { wayLetter } from '../../../src/model/way-letter.ts'
import { demoManual } from '../../support/demo.ts'
import { printedDemo, printedDemos } from '../../support/printed-demos.ts'
import { openPdf, pageTexts } from '../../support/read-pdf.ts'

describe.each(printedDemos)('binder of %s', (id) => {
  let manual: Manual
  let file: string
  let pdf: PDFDocumentProxy
  let labels: readonly string[]

  beforeAll(async () => {
    ;({ manual } = await demoManual(id))
    file = path.join((await printedDemo(id)).folder, 'binder.pdf')
    pdf = await openPdf(file)
    labels = (await pdf.getPageLabels()) ?? []
  })

  it('labels its pages roman in front and by section behind, as printed', async () => {
    expect(labels).toHaveLength(pdf.numPages)
    expect(labels.slice(0, 4)).toEqual(['i', 'ii', 'iii', 'iv'])
    const shown = labels.filter((l) => l !== '')
    expect(new Set(shown).size).toBe(shown.length)
    for (const s of manual.sections) expect(labels).toContain(`${s.number}-1`)
    const texts = await pageTexts(pdf)
    for (const [i, label] of labels.entries())
      if (i > 1 && /-|^[ivx]+$/.test(label))
        expect(texts[i]?.replace(/(\d)- (\d)/g, '$1-$2'), `page ${i + 1}`).toMatch(
          new RegExp(`(?:^| )${label}(?: |$)`),
        )
  })

  it('begins its sections on a right-hand page, and every procedure on a left-hand one', async () => {
    const texts = await pageTexts(pdf)
    for (const s of manual.sections) {
      const opener = labels.indexOf(String(s.number))
      expect(opener % 2, s.title).toBe(0)
      expect(labels[opener + 1]).toBe(`${s.number}-1`)
      for (const p of manual.procedures.filter(({ section }) => section === s.id)) {
        const page = texts.findIndex((t, i) => i > opener && t.includes(`${p.number} ${p.title} `))
        expect(page % 2, p.title).toBe(1)
      }
    }
    const { sections } = manual.facility.binder
    if (sections === 'right-hand')
      for (const [i, label] of labels.entries())
        if (/^\d+$/.test(label)) expect(i % 2, `part ${label}`).toBe(0)
  })

  it('says of every page without text that it is left blank', async () => {
    for (const [i, text] of (await pageTexts(pdf)).entries())
      expect(text, `page ${i + 1}`).toMatch(/\S/)
  })

  it('is on the paper of the facility', async () => {
    const { width, height } = (await pdf.getPage(1)).getViewport({ scale: 1 })
    expect([Math.round(width), Math.round(height)]).toEqual(
      manual.facility.paper === 'letter' ? [612, 792] : [595, 842],
    )
  })

  it('has bookmarks for sections, procedures and methods', async () => {
    const outline = (await pdf.getOutline()) ?? []
    const spaced = (title: string): string => title.replace(/\s+/g, ' ').trim()
    for (const section of manual.sections) {
      const found = outline.find((i) => spaced(i.title) === `${section.number} ${section.title}`)
      const own = section.procedures.flatMap((id) => manual.procedures.filter((p) => p.id === id))
      const titles = found?.items.map((i) => spaced(i.title))
      const ends = ['Why we do it this way', 'Lessons of this section', 'Notes for this section']
      expect(
        titles?.filter((title) => !ends.includes(title)),
        section.title,
      ).toEqual(own.map((p) => `${p.number} ${p.title}`))
      for (const [i, p] of own.entries())
        expect(found?.items[i]?.items.map((x: { title: string }) => spaced(x.title))).toEqual(
          p.methods.map((m, j) => [wayLetter(j, p.methods.length), m.title].join(' ').trim()),
        )
    }
    // A divider names its section, but leads nowhere else.
    for (const section of manual.sections)
      expect(outline.map((i) => spaced(i.title))).not.toContain(section.title)
    // What reaches out of the top of a page would stand twice in its bookmark.
    const titles = (items: typeof outline): string[] =>
      items.flatMap((i) => [i.title, ...titles(i.items)])
    for (const title of titles(outline)) expect(title).not.toMatch(/^(.{2,})\1$/)
  })

  it('has a title and a language, and is marked as tagged', async () => {
    const info = (await pdf.getMetadata()).info as Record<string, unknown>
    expect(info['Title']).toBe(`${manual.facility.name}: Track manual`)
    expect(info['Language']).toBe('en')
    expect(await pdf.getMarkInfo()).toMatchObject({ Marked: true })
  })

  it('is not too large to send', async () => {
    expect((await readFile(file)).length).toBeLessThan(6e6)
  })
})

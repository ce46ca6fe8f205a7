import path from 'node:path'
import type { PDFDocumentProxy } from 'pdfjs-dist/legacy/build/pdf.mjs'
import { beforeAll, describe, expect, it } from 'vitest'
import type { Manual } from '../../../src/model/manual.ts'
import { demoManual } from '../../support/demo.ts'
import { printedDemo, printedDemos } from '../../support/printed-demos.ts'
import { allWords, openPdf, pageTexts, type Word } from '../../support/read-pdf.ts'

type Link = {
  /** Page on which it stands, from 0. */
  readonly page: number
  readonly target: string
  /** Page to which it leads, from 0. */
  readonly to: number
  readonly box: readonly [left: number, low: number, right: number, high: number]
}

/** All links inside a document. @throws Error when one leads nowhere. */
async function linksOf(pdf: PDFDocumentProxy): Promise<readonly Link[]> {
  const links: Link[] = []
  for (let page = 0; page < pdf.numPages; page++) {
    for (const a of await (await pdf.getPage(page + 1)).getAnnotations()) {
      if (a.subtype !== 'Link' || a.url !== undefined) continue
      const place = typeof a.dest === 'string' ? await pdf.getDestination(a.dest) : a.dest
      if (!place?.[0]) throw new Error(`page ${page + 1}: ${JSON.stringify(a.dest)} leads nowhere`)
      const to = await pdf.getPageIndex(place[0])
      links.push({ page, target: String(a.dest), to, box: a.rect as unknown as Link['box'] })
    }
  }
  return links
}

const pageNumber = /^(?:[ivxl]+|\d+-\d+)$/

/** Words in a link itself, close to its box. */
const inside = (words: readonly Word[], [left, , right]: Link['box']): string =>
  words
    .filter((w) => w.x > left - 2 && w.right < right + 2)
    .map((w) => w.text.trim())
    .join('')

/** The page number that is printed for a link of the contents, of a list or of the index. */
function printedNumber(words: readonly Word[], link: Link, isIndex: boolean): string | undefined {
  const [, low, right, high] = link.box
  // The opener of a section has the section's own number.
  const number = link.target.startsWith('section-') ? /^\d+$/ : pageNumber
  const row = words
    .filter((w) => w.text.trim() !== '' && w.y > low - 1 && w.y < high)
    .sort((a, b) => a.x - b.x)
  // In the index the number itself is the link; in contents and lists it stands at the end of the
  // row, which may be that of a column.
  const printed = isIndex
    ? inside(row, link.box).replaceAll(',', '')
    : (row.find((w) => w.x > right && number.test(w.text.trim()))?.text.trim() ?? '')
  return number.test(printed) ? printed : undefined
}

/** Words whose middle lies in the box of a link. */
const within = (words: readonly Word[], [left, low, right, high]: Link['box']): string =>
  words
    .filter(({ x, y, right: end, transform: [size = 0] }) => {
      const [middle, height] = [(x + end) / 2, y + Math.abs(size) / 3]
      return middle > left && middle < right && height > low && height < high
    })
    .map((w) => w.text.trim())
    .join(' ')

/** Number and title of what links lead to, by the name of the place. */
const headsOf = (manual: Manual): ReadonlyMap<string, string> =>
  new Map([
    ...manual.procedures.map((p) => [`procedure-${p.id}`, `${p.number} ${p.title}`] as const),
    ...manual.worksheets.map((w) => [`worksheet-${w.id}`, `${w.number} ${w.title}`] as const),
  ])

describe.each(printedDemos)('links in the binder of %s', (id) => {
  let manual: Manual
  let pdf: PDFDocumentProxy
  let links: readonly Link[]

  beforeAll(async () => {
    ;({ manual } = await demoManual(id))
    pdf = await openPdf(path.join((await printedDemo(id)).folder, 'binder.pdf'))
    links = await linksOf(pdf)
  })

  it('of the contents and of the index stand beside the number of the page to which they lead', async () => {
    const labels = (await pdf.getPageLabels()) ?? []
    const words = await allWords(pdf)
    const texts = await pageTexts(pdf)
    const inFront = (page: number): boolean => /^[ivx]+$/.test(labels[page] ?? '')
    // The index goes on to the end of the binder.
    const index = texts.findIndex(
      (text, page) => !inFront(page) && /Look up what you see/.test(text),
    )
    const led = new Set<string>()
    for (const link of links) {
      const isIndex = link.page >= index
      const isWide = link.box[2] - link.box[0] >= 2
      if (!isWide || (!inFront(link.page) && !isIndex)) continue
      const printed = printedNumber(words[link.page] ?? [], link, isIndex)
      if (printed === undefined) continue
      expect(printed, `${link.target} on page ${labels[link.page]}`).toBe(labels[link.to])
      led.add(link.target)
    }
    for (const p of manual.procedures) expect(led).toContain(`procedure-${p.id}`)
    for (const { places } of manual.termIndex)
      if (places[0] !== undefined) expect(led).toContain(places[0].place)
    for (const r of manual.reckoners) expect(led).toContain(`reckoner-${r.id}`)
    expect(led).toContain('drawing-plan')
  })

  it('lead to what they name, and every worksheet is there', async () => {
    const texts = await pageTexts(pdf)
    const all = texts.join(' ')
    for (const w of manual.worksheets) expect(all, w.number).toContain(`${w.number} ${w.title}`)
    const words = await allWords(pdf)
    const heads = headsOf(manual)
    const wrong: string[] = []
    let numbered = 0
    for (const { page, target, to, box } of links) {
      const head = heads.get(target)
      if (head === undefined) continue
      if (!(texts[to] ?? '').replace(/\s/g, '').includes(head.replace(/\s/g, '')))
        wrong.push(`page ${page + 1}: ${target} leads to a page without ${head}`)
      const printed = within(words[page] ?? [], box)
      // A figure that leads to its worksheet may read like the number of a procedure.
      const named = (head.startsWith('W-') ? /W-\d+/ : /(?<=^|\s)\d+\.\d+(?=\s|$)/).exec(printed)
      if (!named) continue
      numbered++
      if (!head.startsWith(`${named[0]} `))
        wrong.push(`page ${page + 1}: “${printed}” leads to ${head}`)
    }
    expect(wrong).toEqual([])
    expect(numbered).toBeGreaterThan(manual.procedures.length)
  })
})

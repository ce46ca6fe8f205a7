import { PDFDocument } from '@cantoo/pdf-lib'
import type { Browser, Page } from 'puppeteer'
import { finishPdf, type PdfAbout } from '../finish/finish-pdf.ts'
import { destinations } from '../inspect/destinations.ts'
import { openPage } from '../page/open-page.ts'
import { slotLabels } from './page-numbers.ts'

/** What stands in each slot of the contents, by the place that it points to. */
export type PageLabels = Readonly<Record<string, string>>

export type BinderPrint = { readonly bytes: Uint8Array; readonly pages: number; readonly labels: PageLabels }

/** Numbers may move lines and so pages; more rounds than this would mean that they never settle. */
const mostRounds = 4

const margin = { timeout: 300_000, preferCSSPageSize: true, printBackground: true } as const

async function print(page: Page, final: boolean): Promise<PDFDocument> {
  const bytes = await page.pdf({ ...margin, tagged: final, outline: final })
  return PDFDocument.load(bytes, { updateMetadata: false })
}

const readSlots = (page: Page): Promise<string[]> => page.evaluate(() => [...document.querySelectorAll('[data-page-of]')].map((e) => e.dataset['pageOf'] ?? ''))

const fillSlots = (page: Page, labels: Readonly<Record<string, string>>): Promise<void> =>
  page.evaluate((texts) => {
    for (const slot of document.querySelectorAll('[data-page-of]')) slot.textContent = texts[slot.dataset['pageOf'] ?? ''] ?? ''
  }, labels)

function labelsOf(printed: PDFDocument, slots: readonly string[]): { labels: Readonly<Record<string, string>>; bodyStart: number } {
  const places = destinations(printed)
  const start = places.get('body-start')
  if (!start) throw new Error('nothing links to body-start, so the body has no first page')
  return { labels: slotLabels(slots, places, start.page), bodyStart: start.page }
}

/**
 * Prints a binder with page numbers in its contents. Numbers are put in and the document is printed, tagged and with
 * bookmarks, until what is printed is where it is. The first numbers are those of the last build, which seldom move; where
 * there was none, a quick print without tags tells them.
 * @param marginTop Top margin of the pages in points: the browser's link targets lie that much too high.
 * @param last Page numbers of the last build of this binder.
 */
export async function printBinder(browser: Browser, html: string, about: PdfAbout, marginTop: number, last: PageLabels | undefined, tell: (what: string) => void): Promise<BinderPrint> {
  const page = await openPage(browser, html)
  try {
    const slots = await readSlots(page)
    const known = last !== undefined && slots.every((id) => id in last)
    let labels: PageLabels = known ? last : labelsOf(await print(page, false), slots).labels
    for (let round = 1; round <= mostRounds; round++) {
      tell(`binder, print ${known ? round : round + 1}`)
      await fillSlots(page, labels)
      const printed = await print(page, true)
      const now = labelsOf(printed, slots)
      if (slots.every((id) => now.labels[id] === labels[id])) {
        const bytes = await finishPdf(printed, { ...about, bodyStart: now.bodyStart, marginTop })
        return { bytes, pages: printed.getPageCount(), labels: now.labels }
      }
      labels = now.labels
    }
    throw new Error('page numbers do not settle')
  } finally {
    await page.close()
  }
}

import { PDFDocument } from '@cantoo/pdf-lib'
import type { Browser, Page } from 'puppeteer'
import { finishPdf, type PdfAbout } from '../finish/finish-pdf.ts'
import { openPage } from '../page/open-page.ts'

export type SheetPrint = { readonly id: string; readonly bytes: Uint8Array; readonly points: number }
export type SheetsPrint = { readonly all: Uint8Array; readonly each: readonly SheetPrint[] }

/** Type sizes that are tried, points. Below the smallest nobody can read a sheet on a wall. */
const smallest = 7.5
const largest = 24
const step = 0.25

/** Finds for every sheet the largest type at which nothing overflows; null where not even the smallest fits. */
function fitInPage(low: number, high: number, grain: number): { id: string; points: number | null }[] {
  return [...document.querySelectorAll('.sheet')].map((sheet) => {
    const box = sheet.querySelector('.sheet-fit')
    const inner = [...sheet.querySelectorAll('.steps, .side')]
    const columns = sheet.querySelector('.columns')
    const fits = (size: number): boolean => {
      sheet.style.setProperty('--fs', `${size}pt`)
      if (!box || box.scrollHeight > box.clientHeight || box.scrollWidth > box.clientWidth) return false
      const floor = columns?.getBoundingClientRect().bottom ?? Infinity
      // Columns may overflow their row without making the page scroll, so their last lines are looked at too.
      return inner.every((column) => [...column.querySelectorAll('li, table, div, figure, p')].every((e) => e.getBoundingClientRect().bottom <= floor + 0.5))
    }
    let a = Math.round(low / grain)
    let b = Math.round(high / grain)
    if (!fits(a * grain)) return { id: sheet.id, points: null }
    while (b - a > 1) {
      const middle = (a + b) >> 1
      if (fits(middle * grain)) a = middle
      else b = middle
    }
    fits(a * grain)
    return { id: sheet.id, points: a * grain }
  })
}

async function fit(page: Page, distance: (points: number) => string): Promise<ReadonlyMap<string, number>> {
  const search = (): Promise<{ id: string; points: number | null }[]> => page.evaluate(fitInPage, smallest, largest, step)
  const fill = (texts: Record<string, string>): Promise<void> =>
    page.evaluate((t) => {
      for (const sheet of document.querySelectorAll('.sheet')) for (const slot of sheet.querySelectorAll('[data-reading-distance]')) slot.textContent = t[sheet.id] ?? ''
    }, texts)
  const first = await search()
  const lost = first.filter((s) => s.points === null)
  if (lost.length > 0) throw new Error(`too long for one page at ${smallest} pt: ${lost.map((s) => s.id).join(', ')}`)
  await fill(Object.fromEntries(first.map((s) => [s.id, distance(s.points ?? smallest)])))
  // The words just put in take room of their own, so the search is run once more with them.
  return new Map((await search()).map((s) => [s.id, s.points ?? smallest]))
}

async function printShown(page: Page, pages: number, about: PdfAbout): Promise<Uint8Array> {
  const bytes = await page.pdf({ preferCSSPageSize: true, printBackground: true, tagged: true, outline: pages > 1, timeout: 120_000 })
  const printed = await PDFDocument.load(bytes, { updateMetadata: false })
  if (printed.getPageCount() !== pages) throw new Error(`${about.title}: ${printed.getPageCount()} pages instead of ${pages}`)
  return finishPdf(printed, about)
}

/**
 * Prints posted sheets, one page each at the largest type that fits: all in one file, and each in its own.
 * @param distance Says how far type of a size (points) can be read.
 * @throws Error when a sheet does not fit, or does not come out as one page.
 */
export async function printSheets(browser: Browser, html: string, sheets: readonly { readonly id: string; readonly title: string }[], about: PdfAbout, distance: (points: number) => string, tell: (what: string) => void): Promise<SheetsPrint> {
  const page = await openPage(browser, html)
  try {
    const points = await fit(page, distance)
    const all = await printShown(page, sheets.length, about)
    const each: SheetPrint[] = []
    for (const { id, title } of sheets) {
      tell(`sheet ${each.length + 1} of ${sheets.length}`)
      await page.evaluate((only) => {
        for (const sheet of document.querySelectorAll('.sheet')) sheet.style.display = sheet.id === only ? 'block' : 'none'
      }, `sheet-${id}`)
      each.push({ id, bytes: await printShown(page, 1, { ...about, title, seed: `${about.seed}/${id}` }), points: points.get(`sheet-${id}`) ?? smallest })
    }
    return { all, each }
  } finally {
    await page.close()
  }
}

import { PDFDocument } from '@cantoo/pdf-lib'
import type { Browser, Page } from 'puppeteer'
import { finishPdf, type PdfAbout } from '../finish/finish-pdf.ts'
import { openPage } from '../page/open-page.ts'

export type SheetPrint = { readonly id: string; readonly bytes: Uint8Array; /** Size of the type in which the steps are set, points. */ readonly points: number }
export type SheetsPrint = { readonly all: Uint8Array; readonly each: readonly SheetPrint[] }

/** Type sizes that are tried, points. Below the smallest nobody can read a sheet on a wall. */
const smallest = 7.5
const largest = 24
const step = 0.25
/** Steps are set a fifth larger than the rest of a sheet; the style sheet says the same. */
const stepSize = 1.2

/** How much larger than the rest the steps may be set where the column beside them would hold them back. */
const largestGrowth = 1.5

/**
 * Finds for every sheet the largest type at which nothing overflows, then the largest at which its steps still do not;
 * points is null where not even the smallest type fits.
 */
function fitInPage(low: number, high: number, grain: number, mostGrowth: number): { id: string; points: number | null; growth: number }[] {
  const search = (from: number, to: number, fits: (n: number) => boolean): number | null => {
    if (!fits(from)) return null
    let [a, b] = [from, to]
    while (b - a > 1) {
      const middle = (a + b) >> 1
      if (fits(middle)) a = middle
      else b = middle
    }
    fits(a)
    return a
  }
  return [...document.querySelectorAll('.sheet')].map((sheet) => {
    const box = sheet.querySelector('.sheet-fit')
    const columns = sheet.querySelector('.columns')
    const inner = [...sheet.querySelectorAll('.steps, .side')]
    const nothingOver = (): boolean => {
      if (!box || box.scrollHeight > box.clientHeight || box.scrollWidth > box.clientWidth) return false
      const floor = columns?.getBoundingClientRect().bottom ?? Infinity
      // Columns may overflow their row without making the page scroll, so their last lines are looked at too.
      return inner.every((column) => [...column.querySelectorAll('li, table, div, figure, p')].every((e) => e.getBoundingClientRect().bottom <= floor + 0.5))
    }
    const set = (name: string, value: string): boolean => {
      sheet.style.setProperty(name, value)
      return nothingOver()
    }
    set('--grow', '1')
    const size = search(Math.round(low / grain), Math.round(high / grain), (n) => set('--fs', `${n * grain}pt`))
    if (size === null) return { id: sheet.id, points: null, growth: 1 }
    const growth = search(50, Math.round(mostGrowth * 50), (n) => set('--grow', String(n / 50))) ?? 50
    return { id: sheet.id, points: size * grain, growth: growth / 50 }
  })
}

/** Searches before giving up: two that agree are enough. */
const mostSearches = 6

/** Lets the browser take up what it has loaded before the layout is measured. */
const settle = (page: Page): Promise<void> => page.evaluate(() => new Promise<void>((done) => setTimeout(done, 60)))

type Fitted = { readonly id: string; readonly points: number; readonly growth: number }

const stepPoints = (s: { points: number | null; growth: number }): number => (s.points ?? smallest) * s.growth * stepSize

async function fillDistances(page: Page, sizes: readonly { id: string; points: number | null; growth: number }[], distance: (points: number) => string): Promise<void> {
  await page.evaluate((texts) => {
    for (const sheet of document.querySelectorAll('.sheet')) for (const slot of sheet.querySelectorAll('[data-reading-distance]')) slot.textContent = texts[sheet.id] ?? ''
  }, Object.fromEntries(sizes.map((s) => [s.id, distance(stepPoints(s))])))
}

/** Type sizes by sheet. */
async function fit(page: Page, distance: (points: number) => string): Promise<readonly Fitted[]> {
  const search = () => page.evaluate(fitInPage, smallest, largest, step, largestGrowth)
  const first = await search()
  const lost = first.filter((s) => s.points === null)
  if (lost.length > 0) throw new Error(`too long for one page at ${smallest} pt: ${lost.map((s) => s.id).join(', ')}`)
  await fillDistances(page, first, distance)
  // The words just put in take room of their own, so the search is run again with them, until it finds the same twice.
  let before = first
  for (let round = 0; round < mostSearches; round++) {
    await settle(page)
    const now = await search()
    if (JSON.stringify(now) === JSON.stringify(before)) return now.map((s) => ({ ...s, points: s.points ?? smallest }))
    before = now
  }
  throw new Error('the type sizes of the sheets do not settle')
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
  const trial = await openPage(browser, html)
  const fitted = await fit(trial, distance)
  await trial.close()
  // Chromium keeps scaled fonts by hundredths of a pixel, and two sizes that differ by one hundredth may fall together: the
  // one asked for first serves both. A page that has tried many sizes prints what it happened to keep, a new one does not.
  const page = await openPage(browser, html)
  try {
    await page.evaluate((sizes) => {
      for (const { id, points, growth } of sizes) {
        const sheet = document.getElementById(id)
        sheet?.style.setProperty('--fs', `${points}pt`)
        sheet?.style.setProperty('--grow', String(growth))
      }
    }, fitted)
    await fillDistances(page, fitted, distance)
    const points = new Map(fitted.map((s) => [s.id, stepPoints(s)]))
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

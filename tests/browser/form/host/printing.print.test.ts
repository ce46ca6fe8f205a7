import { mkdtemp, readdir, rm, writeFile } from 'node:fs/promises'
import os from 'node:os'
import path from 'node:path'
import { pathToFileURL } from 'node:url'
import type { PDFDocumentProxy } from 'pdfjs-dist/legacy/build/pdf.mjs'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { printPlaces } from '../../../../src/model/print-view.ts'
import { refuseShrunk } from '../../../../src/print/finish/refuse-shrunk.ts'
import { openDocument } from '../../../../src/print/pdf/documents.ts'
import { demoFolder } from '../../../support/demo.ts'
import { loopbackBrowser } from '../../../support/loopback-browser.ts'
import { makerPage } from '../../../support/maker-page.ts'
import { printedDemo } from '../../../support/printed-demos.ts'
import { allWords, openBytes, openPdf, pageTexts } from '../../../support/read-pdf.ts'

type Browser = Awaited<ReturnType<typeof loopbackBrowser>>
type Page = Awaited<ReturnType<Browser['newPage']>>

let folder: string
let browser: Browser
let page: Page
const faults: string[] = []

/** Browsers without a picker that writes: files are given to a field of the page. */
const begin = `
for (const place of [globalThis, Window.prototype]) {
  delete place.showOpenFilePicker
  delete place.showSaveFilePicker
}
const open = globalThis.open.bind(globalThis)
globalThis.open = (address, ...more) => (address === '' ? open(address, ...more) : null)
`

const button = (words: string) => page.locator(`::-p-xpath(//button[starts-with(., "${words}")])`)

/** A laptop whose screen shows five pixels for four, which no paper does. */
const screen = '--force-device-scale-factor=1.25'

beforeAll(async () => {
  folder = await mkdtemp(path.join(os.tmpdir(), 'maker-print-'))
  await writeFile(path.join(folder, 'maker.html'), (await makerPage()).html)
  browser = await loopbackBrowser([screen])
  page = await browser.newPage()
  // High enough that no button lies below the bar at the foot.
  await page.setViewport({ width: 1280, height: 2400 })
  page.on('pageerror', (error) => faults.push(String(error)))
  await page.evaluateOnNewDocument(begin)
  await page.goto(pathToFileURL(path.join(folder, 'maker.html')).href)
  const names = await readdir(demoFolder('larkmoor'))
  const picking = page.waitForFileChooser()
  await button('Open a file').click()
  await (await picking).accept(names.map((name) => path.join(demoFolder('larkmoor'), name)))
  await page.waitForSelector('main [href="#first-dial"], main .door')
  await page.evaluate("location.hash = '#result'")
  await button('Make the manual').click()
  await page.waitForSelector('.printing button', { timeout: 240_000 })
}, 300_000)

afterAll(async () => {
  await browser.close()
  await rm(folder, { recursive: true, force: true })
})

type Print = {
  readonly bytes: Uint8Array
  readonly pdf: PDFDocumentProxy
  /** What stands in the slots for page numbers, with the place of each. */
  readonly slots: readonly (readonly [string, string])[]
  readonly said: string
}

/** Presses a button that opens a document, lets it lay itself out, and prints it. */
async function printed(words: string): Promise<Print> {
  const opening = new Promise<Page>((done) => {
    page.once('popup', (opened) => done(opened as Page))
  })
  await button(words).click()
  const opened = await opening
  opened.on('pageerror', (error) => faults.push(String(error)))
  const state = `document.getElementById('${printPlaces.state}')`
  const isOver = `document.body.classList.contains('is-laid') || /cannot/.test(${state}?.textContent)`
  await opened.waitForFunction(isOver, { timeout: 240_000 })
  const said = String(await opened.evaluate(`${state}.textContent`))
  const slots = (await opened.evaluate(
    `[...document.querySelectorAll('[data-page-of]')].map((s) => [s.dataset.pageOf, s.textContent])`,
  )) as [string, string][]
  const bytes = await opened.pdf({
    preferCSSPageSize: true,
    printBackground: true,
    waitForFonts: false,
    timeout: 240_000,
  })
  await opened.close()
  return { bytes, pdf: await openBytes(bytes), slots, said }
}

/** Points: what stands lower is the foot of a page. */
const foot = 45

/** The number that is printed at the foot of each page. */
async function numbersOf(pdf: PDFDocumentProxy): Promise<readonly string[]> {
  const isNumber = /^(?:[ivx]+|\d+-\d+)$/
  return (await allWords(pdf)).map((words) =>
    words
      .filter((w) => w.y < foot && isNumber.test(w.text.trim()))
      .map((w) => w.text.trim())
      .join(' '),
  )
}

/** All words of a document, each as often as it stands there. */
async function wordsOf(pdf: PDFDocumentProxy): Promise<ReadonlyMap<string, number>> {
  const counts = new Map<string, number>()
  for (const text of await pageTexts(pdf))
    for (const word of text.split(/[^\p{L}’]+/u))
      if (word.length > 3) counts.set(word, (counts.get(word) ?? 0) + 1)
  return counts
}

const pagesSaid = ({ said }: Print): number => Number(/\d+/.exec(said)?.[0])

describe('the binder, printed by a browser from the page that makes manuals alone', () => {
  let print: Print
  let program: PDFDocumentProxy
  beforeAll(async () => {
    print = await printed('Print the binder')
    program = await openPdf(path.join((await printedDemo('larkmoor')).folder, 'binder.pdf'))
  }, 600_000)

  it('names the page on which each of its targets lies', async () => {
    const numbers = await numbersOf(print.pdf)
    const targets = (await print.pdf.getDestinations()) as Readonly<Record<string, unknown[]>>
    const wrong: string[] = []
    for (const [id, label] of print.slots) {
      const at = await print.pdf.getPageIndex(targets[id]?.[0] as never)
      // The opener of a section has the number of its section on the tab, and none at its foot.
      const shown = numbers[at] || (/^section-/.test(id) ? label : '')
      if (shown !== label || label === '') wrong.push(`${id}: ${label} for ${shown}`)
    }
    expect(wrong).toEqual([])
    expect(print.slots.length).toBeGreaterThan(800)
  })

  it('numbers every page once, in the order of its parts', async () => {
    const numbers = (await numbersOf(print.pdf)).filter((n) => n !== '')
    expect(new Set(numbers).size).toBe(numbers.length)
    const parts = numbers.filter((n) => n.includes('-')).map((n) => n.split('-').map(Number))
    const sorted = [...parts].sort((a, b) => (a[0] ?? 0) - (b[0] ?? 0) || (a[1] ?? 0) - (b[1] ?? 0))
    expect(parts).toEqual(sorted)
  })

  it('has the pages that it says, nearly as many as that of the program', () => {
    expect(print.pdf.numPages).toBe(pagesSaid(print))
    expect(Math.abs(print.pdf.numPages - program.numPages)).toBeLessThanOrEqual(4)
  })

  it('loses no word of it', async () => {
    const [here, there] = [await wordsOf(print.pdf), await wordsOf(program)]
    // A head of a table stands once more on every page that the table goes on over.
    const lost = [...there].filter(([word, n]) => (here.get(word) ?? 0) < n * 0.97 - 1)
    expect(lost).toEqual([])
    expect(there.size).toBeGreaterThan(2500)
  })

  it('is printed as large as it is set: nothing is wider than its page', async () => {
    const document = await openDocument(print.bytes)
    expect(() => refuseShrunk(document)).not.toThrow()
  })
})

describe('the posted sheets, printed so', () => {
  it('are a page each, or as many as they say', async () => {
    const print = await printed('Print posted sheets')
    const texts = await pageTexts(print.pdf)
    expect(texts.length).toBe(pagesSaid(print))
    // Every page has its head: none is the rest of one that did not fit.
    expect(
      texts.filter((text) => !/Larkmoor County Fair|Emergency|Who to call/.test(text)),
    ).toEqual([])
    const files = await readdir(path.join((await printedDemo('larkmoor')).folder, 'sheets'))
    const program = await openPdf(
      path.join((await printedDemo('larkmoor')).folder, 'sheets', 'sheets.pdf'),
    )
    expect(files).toContain('sheets.pdf')
    expect(Math.abs(texts.length - program.numPages)).toBeLessThanOrEqual(3)
  })

  it('come one by one too', async () => {
    // The first choice is all of them.
    await page.evaluate(`(() => {
      const which = [...document.querySelectorAll('.printing select')].find((s) => s.value === '')
      which.selectedIndex = 1
    })()`)
    const print = await printed('Print posted sheets')
    expect((await pageTexts(print.pdf))[0]).toContain('Emergency')
    expect(print.pdf.numPages).toBe(pagesSaid(print))
  })
})

it('folds the field book, two pages on each side of a leaf', async () => {
  const print = await printed('Print the field book to fold')
  const [first] = await pageTexts(print.pdf)
  const program = await openPdf(
    path.join((await printedDemo('larkmoor')).folder, 'field-book-booklet.pdf'),
  )
  expect(print.pdf.numPages).toBe(program.numPages)
  const { width, height } = (await print.pdf.getPage(1)).getViewport({ scale: 1 })
  expect([width, height]).toEqual([792, 612])
  expect(first).toContain('Field book')
})

it('does all that without a fault', () => {
  expect(faults).toEqual([])
})

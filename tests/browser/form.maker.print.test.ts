import { mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises'
import os from 'node:os'
import path from 'node:path'
import { pathToFileURL } from 'node:url'
import { unzipSync } from 'fflate'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { libraryOf } from '../../src/browser/form/workshop/library.ts'
import { makeSite, workshopOf } from '../../src/browser/form/workshop/making-site.ts'
import { workFor } from '../../src/browser/form/workshop/work.ts'
import { date, demoFolder } from '../support/demo.ts'
import { firefox, openFirefox } from '../support/firefox.ts'
import { loopbackBrowser } from '../support/loopback-browser.ts'
import { makerPage } from '../support/maker-page.ts'

type Browser = Awaited<ReturnType<typeof loopbackBrowser>>
type Page = Awaited<ReturnType<Browser['newPage']>>

let folder: string
let names: readonly string[]
let expected: ReadonlyMap<string, string>

const oneFile = 'manual.html'

/**
 * What a file shows. Engines differ in the last of seventeen digits of sines and powers, which no
 * page prints: only the data of scripts have them.
 */
const shown = (data: string): string =>
  Buffer.from(data, 'base64')
    .toString('utf8')
    .replace(/<script\b[^>]*>.*?<\/script>/gs, '')
    .replace(/'sha256-[^']*'/g, '')

const base64 = (data: string | Uint8Array): string => Buffer.from(data).toString('base64')

beforeAll(async () => {
  folder = await mkdtemp(path.join(os.tmpdir(), 'maker-'))
  const { html, data, templates } = await makerPage()
  await writeFile(path.join(folder, 'maker.html'), html)
  names = await readdir(demoFolder('larkmoor'))
  const texts = names.map((name) => readFile(path.join(demoFolder('larkmoor'), name), 'utf8'))
  const files = new Map((await Promise.all(texts)).map((text, i) => [names[i] ?? '', text]))
  const { manual } = workFor(data, date, () => new Map())(files)
  const workshop = workshopOf(data, templates)
  if (!manual || !workshop) throw new Error('no manual')
  const made = await makeSite(manual, libraryOf(data, files).words, workshop)
  expected = new Map(made.files.map((f) => [`larkmoor/${f.path}`, base64(f.data)]))
})
afterAll(() => rm(folder, { recursive: true, force: true }))

/** Browsers that save nothing by themselves; what a page hands over is kept in `handed`. */
const begin = `
delete globalThis.showOpenFilePicker
delete Window.prototype.showOpenFilePicker
delete globalThis.showSaveFilePicker
delete Window.prototype.showSaveFilePicker
globalThis.handed = {}
const create = URL.createObjectURL.bind(URL)
const blobs = {}
URL.createObjectURL = (blob) => { const url = create(blob); blobs[url] = blob; return url }
HTMLAnchorElement.prototype.click = function () { handed[this.download] = blobs[this.href] }
globalThis.open = () => null
`

/** Presses a button as a hand does: some browsers show no picker else. */
async function press(page: Page, words: string): Promise<void> {
  const found = await page.evaluateHandle(
    `[...document.querySelectorAll('button')].find((b) => b.textContent.startsWith(${JSON.stringify(words)}))`,
  )
  await (found as Awaited<ReturnType<Page['waitForSelector']>>)?.click()
}

/** What a page has handed over under a name, in Base64. */
const handed = async (page: Page, name: string): Promise<string> =>
  String(
    await page.evaluate(`new Promise((done) => {
      const reader = new FileReader()
      reader.onload = () => done(reader.result.split(',')[1])
      reader.readAsDataURL(handed[${JSON.stringify(name)}])
    })`),
  )

async function openPage(browser: Browser, faults: string[], more = ''): Promise<Page> {
  const page = await browser.newPage()
  page.on('pageerror', (error) => faults.push(String(error)))
  await page.evaluateOnNewDocument(begin + more)
  await page.goto(pathToFileURL(path.join(folder, 'maker.html')).href)
  await page.waitForSelector('.offers button')
  return page
}

/** Picks the files of the demo in the picker of the browser. */
async function pickByHand(page: Page): Promise<void> {
  const picking = page.waitForFileChooser()
  await press(page, 'Open a file')
  await (await picking).accept(names.map((name) => path.join(demoFolder('larkmoor'), name)))
}

/**
 * Gives the files to the page as a picker would: the driver of Firefox closes its picker, which the
 * page takes for a change of mind, before it hands the files over.
 */
async function pickByScript(): Promise<string> {
  const files = await Promise.all(
    names.map(async (name) => [
      name,
      await readFile(path.join(demoFolder('larkmoor'), name), 'utf8'),
    ]),
  )
  return `HTMLInputElement.prototype.click = function () {
    const given = new DataTransfer()
    for (const [name, text] of ${JSON.stringify(files)}) given.items.add(new File([text], name))
    this.files = given.files
    this.dispatchEvent(new Event('change'))
  }`
}

/** What the driver of Firefox does in the page, which its policy forbids, is no fault of the page. */
const ofPage = (faults: readonly string[]): readonly string[] =>
  faults.filter((fault) => !/Content-Security-Policy.*JavaScript eval/.test(fault))

async function makesManual(
  browser: Browser,
  pick: (page: Page) => Promise<void>,
  more = '',
): Promise<Page> {
  const faults: string[] = []
  const page = await openPage(browser, faults, more)
  await pick(page)
  await page.waitForSelector('main [href="#first-dial"], main .door')
  await page.evaluate("location.hash = '#result'")
  await page.waitForSelector('.make button:not([hidden])')
  await press(page, 'Make the manual')
  await page.waitForSelector('.products button', { timeout: 120_000 })
  await press(page, 'The website as a folder')
  const zip = unzipSync(Buffer.from(await handed(page, 'larkmoor-site.zip'), 'base64'))
  expect(Object.keys(zip).sort()).toEqual([...expected.keys()].sort())
  const isPage = (name: string): boolean => name.endsWith('.html') && !name.endsWith(oneFile)
  const pages = Object.entries(zip).filter(([name]) => isPage(name))
  expect(pages.length).toBeGreaterThan(100)
  const others = pages.filter(([name, data]) => base64(data) !== expected.get(name))
  expect(others.map(([name]) => name)).toEqual([])
  await press(page, 'The manual in one file')
  const whole = await handed(page, `larkmoor-${oneFile}`)
  expect(shown(whole)).toBe(shown(expected.get(`larkmoor/${oneFile}`) ?? ''))
  expect(ofPage(faults)).toEqual([])
  return page
}

/** The manual as the page shows it at once: its own script runs there, and no other does. */
async function showsManual(browser: Browser, page: Page): Promise<void> {
  const opened = browser.waitForTarget((target) => target.url().startsWith('blob:'))
  await page.locator('.making a').click()
  const manual = await (await opened).page()
  await manual?.waitForSelector('html.scripted')
  const isBarred = await manual?.evaluate(`(() => {
    const script = document.createElement('script')
    script.textContent = 'globalThis.strange = true'
    document.body.append(script)
    return globalThis.strange === undefined
  })()`)
  expect(isBarred).toBe(true)
}

describe('the page that makes manuals alone, opened from disk', () => {
  it('makes in Chromium what it makes anywhere', async () => {
    const browser = await loopbackBrowser()
    try {
      await showsManual(browser, await makesManual(browser, pickByHand))
    } finally {
      await browser.close()
    }
  })

  it.skipIf(!firefox)('makes the same in Firefox', async () => {
    const browser = await openFirefox()
    try {
      await makesManual(browser, (page) => press(page, 'Open a file'), await pickByScript())
    } finally {
      await browser.close()
    }
  })
})

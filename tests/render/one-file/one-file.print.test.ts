import { mkdtemp, rm, writeFile } from 'node:fs/promises'
import os from 'node:os'
import path from 'node:path'
import { pathToFileURL } from 'node:url'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { loadMakings } from '../../../src/cli/site-files.ts'
import { type BrowserFound, findBrowser } from '../../../src/print/browser/find-browser.ts'
import { oneFileOf } from '../../../src/render/site/site-files.ts'
import { demoManual, folders } from '../../support/demo.ts'

let found: BrowserFound
let folder: string
let file: string

beforeAll(async () => {
  const browser = await findBrowser(process.env)
  if (browser.kind !== 'found') throw new Error(browser.message)
  found = browser
  const { manual, words } = await demoManual('larkmoor')
  const { path: name, data } = await oneFileOf(manual, words, await loadMakings(folders))
  folder = await mkdtemp(path.join(os.tmpdir(), 'one-file-'))
  await writeFile(path.join(folder, name), data)
  file = pathToFileURL(path.join(folder, name)).href
})

afterAll(async () => {
  await found.browser.close()
  await rm(folder, { recursive: true, force: true })
})

/** @returns what the browser has said against the file. */
async function inPage(
  runsScripts: boolean,
  work: (page: Awaited<ReturnType<BrowserFound['browser']['newPage']>>) => Promise<void>,
): Promise<readonly string[]> {
  const page = await found.browser.newPage()
  const said: string[] = []
  page.on('console', (message) => said.push(message.text()))
  page.on('pageerror', (error) => said.push(String(error)))
  page.on('request', (request) => {
    if (!/^(file|data):/.test(request.url())) said.push(`asks for ${request.url()}`)
  })
  await page.setJavaScriptEnabled(runsScripts)
  await page.setViewport({ width: 390, height: 844 })
  await page.goto(file)
  await work(page)
  await page.close()
  return said
}

const leaves =
  '[...document.querySelectorAll(".leaf")].filter((l) => l.offsetHeight > 0).map((l) => l.id)'

describe('the manual in one file on a phone that runs no script', () => {
  it('shows one page at a time, the first one first, by touching links', async () => {
    const said = await inPage(false, async (page) => {
      expect(await page.evaluate(leaves)).toEqual(['index'])
      await page.click('#index a[href="#procedures.seal"]')
      expect(await page.evaluate(leaves)).toEqual(['procedures.seal'])
      await page.click('.bar a[href="#emergency"]')
      expect(await page.evaluate(leaves)).toEqual(['emergency'])
      await page.goBack()
      expect(await page.evaluate(leaves)).toEqual(['procedures.seal'])
    })
    expect(said).toEqual([])
  })

  it('draws what several pages share', async () => {
    await inPage(false, async (page) => {
      await page.goto(`${file}#facility`)
      const drawn =
        '[...document.querySelectorAll("#facility svg > use")].map((u) => u.getBoundingClientRect().height)'
      const heights = (await page.evaluate(drawn)) as readonly number[]
      expect(heights.length).toBeGreaterThan(0)
      for (const height of heights) expect(height).toBeGreaterThan(50)
    })
  })

  it('hides the search that it cannot run, and shows all pages when somebody asks', async () => {
    await inPage(false, async (page) => {
      expect(await page.evaluate('document.querySelector(".find").offsetHeight')).toBe(0)
      await page.click('label[for="all-leaves"]')
      expect(((await page.evaluate(leaves)) as readonly string[]).length).toBeGreaterThan(100)
    })
  })
})

describe('the manual in one file where scripts run', () => {
  it('finds by the field of the first page, and follows what is typed', async () => {
    const said = await inPage(true, async (page) => {
      await page.type('#index .find input', 'greesy')
      await page.keyboard.press('Enter')
      expect(await page.evaluate(leaves)).toEqual(['search'])
      await page.click('.hits a[href="#procedures.slick"]')
      expect(await page.evaluate(leaves)).toEqual(['procedures.slick'])
    })
    expect(said).toEqual([])
  })

  it('works out numbers of the day on their page, and offers no link that nobody else could open', async () => {
    const said = await inPage(true, async (page) => {
      await page.goto(`${file}#today`)
      const field = (await page.evaluate(
        `[...document.querySelectorAll('.day-field label')].find((l) => l.textContent.startsWith('moisture now'))?.htmlFor`,
      )) as string
      await page.focus(`#${field}`)
      await page.keyboard.type('4')
      await page.keyboard.press('Enter')
      const now = 'document.querySelector(\'.day-now:has(+ [data-q="layer.loads"])\')?.textContent'
      expect(await page.evaluate(now)).toMatch(/7/)
      const offered =
        '[...document.querySelectorAll(".day-note button")].filter((b) => b.offsetHeight > 0).length'
      expect(await page.evaluate(offered)).toBe(1)
      await page.click('.day-note button')
      const shows =
        'document.querySelector(\'.day-now:has(+ [data-q="layer.loads"])\')?.checkVisibility() ?? false'
      expect(await page.evaluate(shows)).toBe(false)
    })
    expect(said).toEqual([])
  })
})

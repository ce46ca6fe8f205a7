import path from 'node:path'
import { pathToFileURL } from 'node:url'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { smallTargets } from '../support/accessible.ts'
import { faultsOfPage, looks } from '../support/faults-of-page.ts'
import { loopbackBrowser } from '../support/loopback-browser.ts'
import { siteFolder } from '../support/site-folder.ts'

type Browser = Awaited<ReturnType<typeof loopbackBrowser>>
type Page = Awaited<ReturnType<Browser['newPage']>>

let browser: Browser
let site: Awaited<ReturnType<typeof siteFolder>>

beforeAll(async () => {
  browser = await loopbackBrowser()
  site = await siteFolder('larkmoor')
})

afterAll(async () => {
  await browser.close()
  await site.remove()
})

const address = (hash: string): string =>
  `${pathToFileURL(path.join(site.folder, 'records.html')).href}#${hash}`

/** The page from disk, as a phone shows it; requests to any host are noted. */
async function open(hash: string): Promise<{ page: Page; asked: string[]; faults: string[] }> {
  const page = await browser.newPage()
  const [asked, faults]: [string[], string[]] = [[], []]
  page.on('request', (request) => {
    if (!/^(?:file|blob|data):/.test(request.url())) asked.push(request.url())
  })
  page.on('pageerror', (error) => faults.push(String(error)))
  page.on('console', (message) => {
    if (message.type() === 'error') faults.push(message.text())
  })
  await page.setViewport({ width: 390, height: 844, hasTouch: true, isMobile: true })
  await page.goto(address(hash))
  return { page, asked, faults }
}

const type = async (page: Page, id: string, text: string): Promise<void> => {
  await page.locator(`#${id}`).fill(text)
  await page.keyboard.press('Tab')
}
const textOf = (page: Page, selector: string) =>
  page.evaluate(`document.querySelector(${JSON.stringify(selector)})?.textContent ?? ''`)
const savedText = (page: Page, file: string) =>
  page.evaluate(`document.querySelector('.files textarea[aria-label="${file}"]')?.value ?? ''`)

describe('records on a phone, from disk', () => {
  it('are kept when the page is opened again, checked, and saved as the folder reads them', async () => {
    const { page, asked, faults } = await open('daily-log')
    await page.locator('.earlier').click()
    const day = await page.evaluate('document.getElementById("day").value')
    await type(page, 'daily-log-high', '61')
    await type(page, 'daily-log-low', '88')
    expect(await textOf(page, '#daily-log-high-said')).toContain('high is below the low')
    await type(page, 'daily-log-high', '88')
    await type(page, 'daily-log-low', '61')
    await type(page, 'daily-log-rain', '0.25')
    expect(await textOf(page, '#daily-log-high-said')).toBe('')
    await page.goto('about:blank')
    await page.goto(address('rain-record'))
    await page.locator('.earlier').click()
    // What the log and the record of rain both ask for is written once.
    expect(await page.evaluate('document.getElementById("rain-record-rain").value')).toBe('0.25')
    expect(await savedText(page, 'weather.csv')).toContain(`${day},88,61,0.25,`)
    expect(asked).toEqual([])
    expect(faults).toEqual([])
    await page.close()
  })

  it('take depths one place after another, by touch', async () => {
    const { page } = await open('depth-grid')
    const places = await page.$$eval('.depths input', (all) => all.length)
    const first = await textOf(page, '.place')
    for (let i = 0; i < places; i++) await page.locator('.keys button:nth-child(9)').click()
    expect(first).toContain('0 ft')
    expect(await textOf(page, '.pad .done')).toContain(`${places} of ${places}`)
    const lines = String(await savedText(page, 'depths.csv'))
      .trim()
      .split('\n')
    expect(lines).toHaveLength(places + 1)
    expect(lines[1]).toMatch(/^0,5,1 1\/4,\d{4}-\d\d-\d\d$/)
    await page.close()
  })

  it('are taken back one step, and wiped after asking', async () => {
    const { page } = await open('watering-log')
    await page.evaluate('localStorage.clear()')
    await page.reload()
    await page.locator('[data-step="1"]').click()
    await page.locator('[data-step="1"]').click()
    const loads = () => page.evaluate('document.getElementById("watering-log-loads").value')
    expect(await loads()).toBe('2')
    await page.locator('.back').click()
    expect(await loads()).toBe('1')
    await page.locator('.wipe').click()
    expect(await page.evaluate('document.activeElement.textContent')).toBe('Leave them')
    await page.keyboard.press('Tab')
    await page.keyboard.press('Enter')
    expect(await loads()).toBe('')
    await page.locator('.back').click()
    expect(await loads()).toBe('1')
    await page.close()
  })

  it.each(['daily-log', 'depth-grid', 'moisture-log', 'watering-log', 'rain-record'])(
    'have no fault that a program finds, and can be touched with gloves: %s',
    async (record) => {
      const { page, faults } = await open(record)
      expect(await smallTargets(page, '.records')).toEqual([])
      // The program that looks for faults says things of its own.
      expect(faults).toEqual([])
      expect(await faultsOfPage(page, looks)).toEqual([])
      await page.close()
    },
  )

  it('say it when the browser keeps nothing', async () => {
    const page = await browser.newPage()
    await page.evaluateOnNewDocument(
      'Object.defineProperty(window, "localStorage", { get() { throw new Error("none") } })',
    )
    await page.goto(address('daily-log'))
    expect(await textOf(page, '.store')).toContain('keeps nothing')
    await page.close()
  })

  it('lead to paper where no script runs', async () => {
    const page = await browser.newPage()
    await page.setJavaScriptEnabled(false)
    await page.goto(address('daily-log'))
    expect(await page.$eval('.without', (line) => line.getBoundingClientRect().height > 0)).toBe(
      true,
    )
    expect(await page.$eval('.records', (box) => box.getBoundingClientRect().height)).toBe(0)
    await page.close()
  })
})

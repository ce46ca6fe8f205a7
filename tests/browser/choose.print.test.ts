import path from 'node:path'
import { pathToFileURL } from 'node:url'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type BrowserFound, findBrowser } from '../../src/print/browser/find-browser.ts'
import { siteFolder } from '../support/site-folder.ts'

let found: BrowserFound
let site: Awaited<ReturnType<typeof siteFolder>>
let page: Awaited<ReturnType<BrowserFound['browser']['newPage']>>

beforeAll(async () => {
  const browser = await findBrowser(process.env)
  if (browser.kind !== 'found') throw new Error(browser.message)
  found = browser
  site = await siteFolder('larkmoor')
  page = await found.browser.newPage()
  await page.setViewport({ width: 390, height: 844 })
})

afterAll(async () => {
  await found.browser.close()
  await site.remove()
})

const open = async (runsScripts: boolean, place = ''): Promise<void> => {
  await page.goto('about:blank')
  await page.setJavaScriptEnabled(runsScripts)
  await page.goto(`${pathToFileURL(path.join(site.folder, 'symptoms.html')).href}${place}`)
}

const shown = '[...document.querySelectorAll("details.symptom:not([hidden])")].map((d) => d.id)'
const press = (question: number, answer: string): Promise<unknown> =>
  page.evaluate(
    `[...document.querySelectorAll(".ask:nth-of-type(${question}) button")].find((b) => b.textContent.startsWith("${answer}")).click()`,
  )

describe('the page "What do you see?"', () => {
  it('lists by question what fits each answer, without a script', async () => {
    await open(false)
    await page.click('.ask:first-of-type summary')
    await page.click('.ask:first-of-type a[href="#cuppy-rail"]')
    expect(page.url()).toContain('#cuppy-rail')
  })

  it('leaves less with each answer, and says what to measure and where that leads', async () => {
    await open(true)
    const all = (await page.evaluate(shown)) as readonly string[]
    await press(1, 'At the rail')
    const some = (await page.evaluate(shown)) as readonly string[]
    expect(some.length).toBeLessThan(all.length / 2)
    await press(2, 'Prints stay open')
    expect(await page.evaluate(shown)).toEqual(['cuppy-rail', 'prints-stay'])
    expect(await page.evaluate('document.querySelector(".fits").textContent')).toBe(
      `2 of ${all.length} fit`,
    )
    const told = (await page.evaluate(
      '[...document.querySelectorAll(".apart a.leads")].map((a) => a.getAttribute("href"))',
    )) as readonly string[]
    expect(new Set(told)).toEqual(
      new Set([
        'procedures/rail-build-up.html',
        'procedures/water.html',
        'procedures/set-depth.html',
      ]),
    )
    await page.click('.again')
    expect(await page.evaluate(shown)).toEqual(all)
  })

  it('is worked by keyboard alone, the focus going on to what is asked next', async () => {
    await open(true)
    await page.focus('.ask:first-of-type button')
    await page.keyboard.press('Enter')
    expect(await page.evaluate('document.activeElement.textContent')).toContain('What do you see?')
    await page.keyboard.press('Tab')
    expect(await page.evaluate('document.activeElement.localName')).toBe('button')
  })

  it('opens what an address names', async () => {
    await open(true, '#dusty')
    expect(await page.evaluate('document.getElementById("dusty").open')).toBe(true)
  })
})

import path from 'node:path'
import { pathToFileURL } from 'node:url'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type BrowserFound, findBrowser } from '../../../src/print/browser/find-browser.ts'
import { demos } from '../../support/demo.ts'
import { siteFolder } from '../../support/site-folder.ts'

let found: BrowserFound
let page: Awaited<ReturnType<BrowserFound['browser']['newPage']>>

beforeAll(async () => {
  const browser = await findBrowser(process.env)
  if (browser.kind !== 'found') throw new Error(browser.message)
  found = browser
  page = await found.browser.newPage()
})

afterAll(() => found.browser.close())

describe.each(demos)('site of %s in a browser, from disk', (id) => {
  let site: Awaited<ReturnType<typeof siteFolder>>
  beforeAll(async () => {
    site = await siteFolder(id)
  })
  afterAll(() => site.remove())

  const open = (name: string) =>
    page.goto(pathToFileURL(path.join(site.folder, `${name}.html`)).href)

  it('lets nothing be asked of another host, and no script run that stands in a page', async () => {
    await open('index')
    const { ran, blocked } = (await page.evaluate(`new Promise((done) => {
      const blocked = []
      addEventListener('securitypolicyviolation', (e) => blocked.push(e.effectiveDirective + ' ' + e.blockedURI))
      const add = (name, set) => document.body.append(Object.assign(document.createElement(name), set))
      add('img', { src: 'https://elsewhere.example/' })
      add('iframe', { src: 'https://elsewhere.example/' })
      add('script', { src: 'https://elsewhere.example/' })
      add('script', { textContent: 'window.ran = true' })
      add('link', { rel: 'stylesheet', href: 'https://elsewhere.example/' })
      fetch('https://elsewhere.example/').catch(() => undefined)
      setTimeout(() => done({ ran: window.ran === true, blocked: blocked.sort() }), 500)
    })`)) as { ran: boolean; blocked: readonly string[] }
    expect(ran).toBe(false)
    expect(blocked.map((b) => b.replace(/ https:.*/, ''))).toEqual([
      'connect-src',
      'frame-src',
      'img-src',
      'script-src-elem',
      'script-src-elem inline',
      'style-src-elem',
    ])
  })
})

describe('the search page, from disk', () => {
  it('follows what is typed, goes to the first result by the return key, and says how many there are', async () => {
    const site = await siteFolder('larkmoor')
    await page.goto(pathToFileURL(path.join(site.folder, 'index.html')).href)
    await page.type('#find', 'greesy')
    await Promise.all([page.waitForNavigation(), page.keyboard.press('Enter')])
    expect(page.url()).toContain('search.html?q=greesy')
    const titles = '[...document.querySelectorAll(".hits b")].map((b) => b.textContent)'
    expect(await page.evaluate(titles)).toContain('Slick surface')
    await page.focus('#find')
    await page.keyboard.press('Enter')
    expect(
      await page.evaluate('document.activeElement.closest(".hits li:first-child") !== null'),
    ).toBe(true)
    await page.waitForFunction('document.querySelector(".said").textContent.includes("Found")')
    await site.remove()
  })
})

describe('a phone that has been told the day', () => {
  it('shows on the first page what comes next from that day on', async () => {
    const site = await siteFolder('larkmoor')
    const shown = async (date: string): Promise<{ days: unknown; first: unknown }> => {
      const tab = await found.browser.newPage()
      await tab.evaluateOnNewDocument(`{
        const Real = Date
        globalThis.Date = class extends Real { constructor(...given) { super(...(given.length ? given : ['${date}T12:00:00'])) } }
      }`)
      await tab.goto(pathToFileURL(path.join(site.folder, 'index.html')).href)
      const days = await tab.evaluate(
        '[...document.querySelectorAll(".due li:not([hidden]) time")].map((t) => t.dateTime)',
      )
      const first = await tab.evaluate(
        'document.querySelector(".doors li:not([hidden]) b").innerText',
      )
      await tab.close()
      return { days, first }
    }
    expect((await shown('2027-08-04')).days).toEqual([
      '2027-08-04',
      '2027-08-06',
      expect.any(String),
    ])
    // Ten days before the first race somebody may just have been hired; after it nobody starts.
    expect((await shown('2027-07-24')).first).toBe('Ready in ten days')
    expect((await shown('2027-08-04')).first).not.toBe('Ready in ten days')
    expect((await shown('2027-06-20')).first).not.toBe('Ready in ten days')
    await site.remove()
  })
})

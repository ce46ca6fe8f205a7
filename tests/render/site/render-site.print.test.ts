import { readFile } from 'node:fs/promises'
import { createRequire } from 'node:module'
import path from 'node:path'
import { pathToFileURL } from 'node:url'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type BrowserFound, findBrowser } from '../../../src/print/browser/find-browser.ts'
import { printedDemo, printedDemos } from '../../support/printed-demos.ts'

/** One page of each kind. */
const pages = [
  'index',
  'symptoms',
  'procedures/seal',
  'worksheets/area',
  'numbers',
  'reckoners',
  'safety',
  'hazards',
  'learn',
  'findings',
  'facility',
  'terms',
  'plans',
  'plans/race-days',
  'plans/training',
  'plans/symptom-chart',
]

const run =
  'axe.run({ runOnly: ["wcag2a", "wcag2aa", "best-practice"] }).then((r) => r.violations.map((v) => `${v.id}: ${v.nodes[0].html.slice(0, 120)}`))'

describe.each(printedDemos)('site of %s in a browser as wide as a phone', (id) => {
  let found: BrowserFound
  let page: Awaited<ReturnType<BrowserFound['browser']['newPage']>>
  let axe: string
  let site: string

  beforeAll(async () => {
    const browser = await findBrowser(process.env)
    if (browser.kind !== 'found') throw new Error(browser.message)
    found = browser
    page = await found.browser.newPage()
    await page.setViewport({ width: 375, height: 800 })
    axe = await readFile(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')
    site = path.join((await printedDemo(id)).folder, 'site')
  })

  afterAll(() => found.browser.close())

  it.each(pages)('has no accessibility faults, and nothing too wide: %s', async (name) => {
    await page.goto(pathToFileURL(path.join(site, `${name}.html`)).href)
    await page.evaluate(axe)
    expect(await page.evaluate(run)).toEqual([])
    expect(
      await page.evaluate('document.documentElement.scrollWidth - window.innerWidth'),
    ).toBeLessThanOrEqual(0)
  })
})

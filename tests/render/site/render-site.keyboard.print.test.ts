import path from 'node:path'
import { pathToFileURL } from 'node:url'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type BrowserFound, findBrowser } from '../../../src/print/browser/find-browser.ts'
import { siteFolder } from '../../support/site-folder.ts'

let found: BrowserFound
let site: Awaited<ReturnType<typeof siteFolder>>

beforeAll(async () => {
  const browser = await findBrowser(process.env)
  if (browser.kind !== 'found') throw new Error(browser.message)
  found = browser
  site = await siteFolder('larkmoor')
})

afterAll(async () => {
  await found.browser.close()
  await site.remove()
})

type Stop = { readonly called: string; readonly ring: boolean; readonly seen: boolean }

/** What has the focus: whether a line stands around it, and whether nothing else covers it. */
const stop = `(() => {
  const at = document.activeElement
  if (!at || at === document.body) return
  const { outlineStyle, outlineWidth } = getComputedStyle(at)
  const box = at.getBoundingClientRect()
  const top = document.elementFromPoint(
    Math.min(box.left + box.width / 2, innerWidth - 1),
    Math.min(box.top + box.height / 2, innerHeight - 1))
  return {
    called: (at.getAttribute('aria-label') ?? at.textContent ?? '').trim().slice(0, 40) || at.id,
    // A field for a date has parts, whose marks are the browser's own.
    ring: at.type === 'date' || (outlineStyle !== 'none' && parseFloat(outlineWidth) >= 2),
    seen: top !== null && (at.contains(top) || top.contains(at) || top.closest('label')?.control === at),
  }
})()`

/** Places that the tabulator stops at, one after the other. */
async function stopsOf(name: string, width: number): Promise<readonly Stop[]> {
  const page = await found.browser.newPage()
  await page.setViewport({ width, height: 800 })
  await page.goto(pathToFileURL(path.join(site.folder, name)).href)
  const stops: Stop[] = []
  for (let i = 0; i < 60; i++) {
    await page.keyboard.press('Tab')
    const next = (await page.evaluate(stop)) as Stop | undefined
    if (!next) break
    stops.push(next)
  }
  await page.close()
  return stops
}

describe.each([390, 1000])('by keyboard, %i px wide', (width) => {
  it.each(['index', 'search', 'symptoms', 'procedures/cuppy', 'today', 'records', 'learn'])(
    'every stop of %s is marked, and covered by nothing',
    async (name) => {
      const stops = await stopsOf(`${name}.html`, width)
      expect(stops.length).toBeGreaterThan(10)
      expect(stops.filter((s) => !s.ring || !s.seen)).toEqual([])
    },
  )
})

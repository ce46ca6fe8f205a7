import { readFile } from 'node:fs/promises'
import { createRequire } from 'node:module'
import type { BrowserFound } from '../../src/print/browser/find-browser.ts'

export type Tab = Awaited<ReturnType<BrowserFound['browser']['newPage']>>

/** How a page is looked at, and for what. */
export type Look = {
  readonly width: number
  readonly scheme: 'light' | 'dark'
  /** Where only colors differ from another look, only these are looked at. */
  readonly colorsOnly?: true
}

/** A phone and a desk, by day and by night. */
export const looks: readonly Look[] = [
  { width: 375, scheme: 'light' },
  { width: 375, scheme: 'dark', colorsOnly: true },
  { width: 1280, scheme: 'dark', colorsOnly: true },
  { width: 1280, scheme: 'light' },
]

/** Each width and each scheme once. */
export const fewLooks: readonly Look[] = [
  { width: 375, scheme: 'light' },
  { width: 1280, scheme: 'dark' },
]

/** Everything once, and what another width and scheme change. */
export const dayAndNight: readonly Look[] = [
  { width: 375, scheme: 'light' },
  { width: 1280, scheme: 'dark', colorsOnly: true },
]

/**
 * Everything that axe knows of WCAG 2.2 A and AA and of good practice. Inside formulas and drawings
 * nothing is looked at: each is one picture with words.
 */
const run = ({ colorsOnly }: Look): string => `axe.run({ exclude: [["math"], ["svg > *"]] }, {
  runOnly: ${colorsOnly ? '{ type: "rule", values: ["color-contrast"] }' : '["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"]'},
  resultTypes: ["violations"], preload: false, iframes: false,
}).then((r) => r.violations.map((v) => v.id + ": " + v.nodes[0].html.slice(0, 120)))`

/** Until then a page has not heard that its width is another. */
const twoFrames = 'new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)))'

/** Shows a page in a look. */
export async function show(tab: Tab, { width, scheme }: Look): Promise<void> {
  await tab.setViewport({ width, height: 800 })
  await tab.emulateMediaFeatures([{ name: 'prefers-color-scheme', value: scheme }])
  await tab.evaluate(twoFrames)
}

const axe = await readFile(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')

/**
 * What is wrong with the page that a tab shows, in each look.
 * @returns faults with the look in which they are met; empty when there are none.
 */
export async function faultsOfPage(tab: Tab, among: readonly Look[]): Promise<readonly string[]> {
  const faults: string[] = []
  for (const look of among) {
    const { width, scheme } = look
    await show(tab, look)
    // A page that is no longer one of a phone has been loaded anew.
    if (!(await tab.evaluate('"axe" in globalThis'))) await tab.evaluate(axe)
    const broken = (await tab.evaluate(run(look))) as readonly string[]
    const over = Number(
      await tab.evaluate('document.documentElement.scrollWidth - window.innerWidth'),
    )
    const all = [...broken, ...(over > 0 ? [`${over} px too wide`] : [])]
    faults.push(...all.map((fault) => `${width} ${scheme}: ${fault}`))
  }
  return faults
}

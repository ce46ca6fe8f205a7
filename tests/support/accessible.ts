import { readFile } from 'node:fs/promises'
import { createRequire } from 'node:module'
import type { loopbackBrowser } from './loopback-browser.ts'

type Browser = Awaited<ReturnType<typeof loopbackBrowser>>
export type Page = Awaited<ReturnType<Browser['newPage']>>

const run =
  'axe.run({ runOnly: ["wcag2a", "wcag2aa", "wcag22aa", "best-practice"] }).then((r) => r.violations.map((v) => `${v.id}: ${v.nodes[0].html.slice(0, 120)}`))'

/** What a program finds wrong with a page as it stands now, in a phone's width and a desk's. */
export async function accessFaults(page: Page): Promise<readonly string[]> {
  const axe = await readFile(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')
  const faults: string[] = []
  for (const width of [390, 1280])
    for (const scheme of ['light', 'dark']) {
      await page.setViewport({ width, height: 844 })
      await page.emulateMediaFeatures([{ name: 'prefers-color-scheme', value: scheme }])
      await page.evaluate(axe)
      const found = (await page.evaluate(run)) as readonly string[]
      faults.push(...found.map((fault) => `${width} ${scheme} ${fault}`))
      const wide = await page.evaluate('document.documentElement.scrollWidth - window.innerWidth')
      if (Number(wide) > 0) faults.push(`${width} too wide by ${wide}`)
    }
  return faults
}

/**
 * What can be touched in a part of the page and is lower than a gloved finger asks for, px; numbers
 * and links inside sentences are as high as these.
 */
export async function smallTargets(
  page: Page,
  part: string,
  least = 48,
): Promise<readonly string[]> {
  const found = await page.evaluate(`[...document.querySelectorAll(${JSON.stringify(
    ['a', 'button', 'input', 'textarea', 'summary', 'label:has(input)']
      .map((name) => `${part} ${name}`)
      .join(),
  )})]
    .filter((e) => e.checkVisibility() && !(e.matches('a') && e.closest('p')) && !(e.matches('input') && e.closest('label')))
    .map((e) => ({ e, box: e.getBoundingClientRect() }))
    .filter(({ box }) => Math.round(box.height) < ${least})
    .map(({ e, box }) => e.tagName + ' ' + (e.id || e.textContent).trim().slice(0, 40) + ' ' + Math.round(box.height))`)
  return found as readonly string[]
}

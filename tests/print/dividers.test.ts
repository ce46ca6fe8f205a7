import { PDFDocument } from '@cantoo/pdf-lib'
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { brokenRules } from '../../src/print/inspect/pdf-rules.ts'
import type { Press } from '../../src/print/press/press.ts'
import { printPages } from '../../src/print/press/print-pages.ts'
import { dividedParts } from '../../src/render/binder/divided-parts.ts'
import { renderBinder } from '../../src/render/binder/render-binder.ts'
import { renderDividers, tabStock, tabsInBank } from '../../src/render/dividers/render-dividers.ts'
import { assetsFor, demoManual } from '../support/demo.ts'
import { openTestPress } from '../support/test-press.ts'

let press: Press
let close: () => Promise<void>

beforeAll(async () => {
  ;({ press, close } = await openTestPress())
}, 60_000)

afterAll(() => close())

const about = {
  title: 'Dividers',
  author: 'a',
  subject: 's',
  keywords: [],
  lang: 'en',
  date: '2027-06-14',
  creator: 'c',
  seed: 's',
}

describe.each(['letter', 'a4'] as const)('dividers for tab stock, %s', (paper) => {
  it('are one leaf a part, of the size that such leaves are sold in, each with its title inside its own tab', async () => {
    const { manual: own, words } = await demoManual('ostmere')
    const manual = { ...own, facility: { ...own.facility, paper } }
    const bytes = await printPages(
      press,
      renderDividers(manual, await assetsFor(words, 'inline')),
      about,
    )
    const pdf = await getDocument({ data: new Uint8Array(bytes), verbosity: 0 }).promise
    const parts = dividedParts(manual, words)
    expect(pdf.numPages).toBe(parts.length)
    const points = 72 / 25.4
    const {
      body: [width, height],
      tab,
    } = tabStock[paper]
    for (const [i, part] of parts.entries()) {
      const page = await pdf.getPage(i + 1)
      const view = page.getViewport({ scale: 1 })
      expect(Math.abs(view.width - (width + tab) * points)).toBeLessThan(1)
      expect(Math.abs(view.height - height * points)).toBeLessThan(1)
      const items = (await page.getTextContent()).items.flatMap((t) =>
        'str' in t && t.str.trim() !== '' ? [t] : [],
      )
      // Words on the tab run downward; all others are level.
      const onTab = items.filter(
        (t) => Math.abs(t.transform[1] as number) > Math.abs(t.transform[0] as number),
      )
      expect(
        onTab
          .map((t) => t.str)
          .join(' ')
          .replace(/\s+/g, ' ')
          .trim(),
      ).toBe(`${part.number} ${part.title}`)
      const place = i % tabsInBank
      const [top, foot] = [
        view.height - (place * view.height) / tabsInBank,
        view.height - ((place + 1) * view.height) / tabsInBank,
      ]
      for (const t of onTab) {
        const [x, y] = [t.transform[4] as number, t.transform[5] as number]
        const end = y + Math.sign(t.transform[1] as number) * t.width
        expect(x, part.title).toBeGreaterThan(width * points)
        expect(x).toBeLessThan(view.width - 4)
        expect(Math.max(y, end)).toBeLessThan(top)
        expect(Math.min(y, end)).toBeGreaterThan(foot)
      }
      for (const t of items.filter((t) => !onTab.includes(t)))
        expect((t.transform[4] as number) + t.width).toBeLessThan(width * points)
    }
    expect(brokenRules(await PDFDocument.load(bytes, { updateMetadata: false }))).toEqual([])
  }, 60_000)
})

describe('a binder with tab stock', () => {
  it('has no divider leaves of its own, and begins every part on a right-hand page', async () => {
    const { manual, words } = await demoManual('ostmere')
    const assets = await assetsFor(words, 'inline')
    const { parts, rightHand } = renderBinder(manual, assets)
    expect(rightHand).toBe(true)
    expect(parts.every((p) => p.unnumbered === 0 && !p.body.includes('class="divider"'))).toBe(true)
    const leaves = renderBinder(
      {
        ...manual,
        facility: { ...manual.facility, binder: { ...manual.facility.binder, dividers: 'leaves' } },
      },
      assets,
    )
    expect(
      leaves.parts.filter((p) => p.body.includes('class="divider"')).map((p) => p.pages.number),
    ).toEqual(dividedParts(manual, words).map((p) => p.number))
  })
})

import { describe, expect, it } from 'vitest'
import { binderStock, paperSize } from '../../../src/model/papers.ts'
import { openDocument } from '../../../src/print/pdf/documents.ts'
import { printPages } from '../../../src/print/press/print-pages.ts'
import { dividedParts } from '../../../src/render/binder/divided-parts.ts'
import { renderDividers, tabsInBank } from '../../../src/render/binder/render-dividers.ts'
import { assetsFor, demoManual } from '../../support/demo.ts'
import { brokenRules } from '../../support/pdf-rules/broken-rules.ts'
import { allWords, openBytes } from '../../support/read-pdf.ts'
import { about } from '../../support/sample-document.ts'
import { usePress } from '../../support/test-press.ts'

const press = usePress()

describe.each(['letter', 'a4'] as const)('dividers for tab stock, %s', (paper) => {
  it('are one leaf a part, of the size that such leaves are sold in, each with its title inside its own tab', async () => {
    const { manual: own, words } = await demoManual('ostmere')
    const manual = { ...own, facility: { ...own.facility, paper } }
    const bytes = await printPages(
      press(),
      renderDividers(manual, await assetsFor(words, 'inline')),
      about,
    )
    const pdf = await openBytes(bytes)
    const parts = dividedParts(manual, words)
    expect(pdf.numPages).toBe(parts.length)
    const points = 72 / 25.4
    const [width, height] = paperSize(paper)
    const { tab } = binderStock(paper)
    const shown = await allWords(pdf)
    for (const [i, part] of parts.entries()) {
      const view = (await pdf.getPage(i + 1)).getViewport({ scale: 1 })
      expect(Math.abs(view.width - (width + tab) * points)).toBeLessThan(1)
      expect(Math.abs(view.height - height * points)).toBeLessThan(1)
      const items = (shown[i] ?? []).filter((w) => w.text.trim() !== '')
      // Words on the tab run downward; all others are level.
      const onTab = items.filter(
        ({ transform: [along = 0, down = 0] }) => Math.abs(down) > Math.abs(along),
      )
      const said = onTab.map((w) => w.text).join(' ')
      expect(said.replace(/\s+/g, ' ').trim()).toBe(`${part.number} ${part.title}`)
      const place = i % tabsInBank
      const [top, foot] = [
        view.height - (place * view.height) / tabsInBank,
        view.height - ((place + 1) * view.height) / tabsInBank,
      ]
      for (const w of onTab) {
        const end = w.y + Math.sign(w.transform[1] ?? 0) * (w.right - w.x)
        expect(w.x, part.title).toBeGreaterThan(width * points)
        expect(w.x).toBeLessThan(view.width - 4)
        expect(Math.max(w.y, end)).toBeLessThan(top)
        expect(Math.min(w.y, end)).toBeGreaterThan(foot)
      }
      for (const w of items.filter((w) => !onTab.includes(w)))
        expect(w.right).toBeLessThan(width * points)
    }
    expect(brokenRules(openDocument(bytes))).toEqual([])
  })
})

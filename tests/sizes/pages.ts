import path from 'node:path'
import { margins } from '../../src/render/binder/page-rules.ts'
import { openPdf, type Word, wordsOn } from '../support/read-pdf.ts'

// What fills the pages of a binder, by part:
// npm run pages [-- <binder.pdf>]

/** Points. Where no word stands for so much of a page, it is counted as empty. */
const emptyFrom = 72
const inch = 72

type Page = {
  readonly label: string
  /** Share of the page's height, between its margins, on which something stands. */
  readonly fill: number
  readonly begins: string
}

/** Words between head and foot, without tabs and what stands along the edge. */
function bodyOf(words: readonly Word[], height: number): readonly Word[] {
  const [low, high] = [margins.bottom * inch, height - margins.top * inch + 2]
  return words.filter(({ text, y, transform: [, b = 0] }) => {
    const isTurned = Math.abs(b) > 1e-3
    return text.trim() !== '' && !isTurned && y >= low && y <= high
  })
}

/** Share of the height that is not empty; rules to write on are no words, and count as empty. */
function fillOf(words: readonly Word[], height: number): number {
  const [top, foot] = [height - margins.top * inch, margins.bottom * inch]
  const lines = [top, ...words.map((w) => w.y).sort((a, b) => b - a), foot]
  const empty = lines.slice(1).map((y, i) => (lines[i] ?? top) - y)
  const sum = empty.filter((gap) => gap > emptyFrom).reduce((all, gap) => all + gap, 0)
  return 1 - sum / (top - foot)
}

async function pagesOf(file: string): Promise<readonly Page[]> {
  const pdf = await openPdf(file)
  const labels = (await pdf.getPageLabels()) ?? []
  return Promise.all(
    Array.from({ length: pdf.numPages }, async (_, i) => {
      const page = await pdf.getPage(i + 1)
      const { height } = page.getViewport({ scale: 1 })
      const words = bodyOf(await wordsOn(page), height)
      const begins = words
        .slice(0, 14)
        .map((w) => w.text)
        .join(' ')
        .replace(/\s+/g, ' ')
      return { label: labels[i] ?? '', fill: fillOf(words, height), begins }
    }),
  )
}

/** `3` for `3-2` and for the opener of part 3; the front has roman numbers. */
const partOf = ({ label }: Page): string => /^\d+/.exec(label)?.[0] ?? 'front'

function rowOf(part: string, pages: readonly Page[]): string {
  const count = (from: number, until: number): number =>
    pages.filter((p) => p.fill >= from && p.fill < until).length
  const filled = pages.reduce((sum, p) => sum + p.fill, 0)
  const cells = [pages.length, filled.toFixed(1), count(-1, 1 / 3), count(1 / 3, 1 / 2)]
  return [part.padEnd(8), ...cells.map((c) => String(c).padStart(14))].join('')
}

const file = path.resolve(process.argv[3] ?? path.join('dist', 'larkmoor', 'binder.pdf'))
const pages = await pagesOf(file)
const parts = [...new Set(pages.map(partOf))]
const heads = ['pages', 'if full', 'under a third', 'under a half']
console.log(['part'.padEnd(8), ...heads.map((h) => h.padStart(14))].join(''))
for (const part of parts)
  console.log(
    rowOf(
      part,
      pages.filter((p) => partOf(p) === part),
    ),
  )
console.log(rowOf('all', pages))
console.log('\nPages under a half, with what they begin with:')
for (const { label, fill, begins } of pages.filter((p) => p.fill < 1 / 2))
  console.log(`${label.padEnd(6)} ${(fill * 100).toFixed(0).padStart(3)} %  ${begins.slice(0, 80)}`)

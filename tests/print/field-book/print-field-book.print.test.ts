import { beforeAll, describe, expect, it } from 'vitest'
import { bookletSides } from '../../../src/print/field-book/booklet-order.ts'
import {
  type FieldBookPrint,
  printFieldBook,
  printHandout,
} from '../../../src/print/field-book/print-field-book.ts'
import { openDocument } from '../../../src/print/pdf/documents.ts'
import { pageCount, pageSize } from '../../../src/print/pdf/pages.ts'
import { renderFieldBook, renderHandout } from '../../../src/render/field-book/render-field-book.ts'
import { assetsFor, demoManual } from '../../support/demo.ts'
import { brokenRules } from '../../support/pdf-rules/broken-rules.ts'
import { allWords, openBytes, type Word } from '../../support/read-pdf.ts'
import { usePress } from '../../support/test-press.ts'
import { overlaps, textBoxes } from '../../support/text-boxes.ts'

const press = usePress()

const about = {
  title: 'Field book',
  author: 'Fair',
  subject: 'Track manual',
  keywords: [],
  lang: 'en',
  date: '2027-06-14',
  creator: 'test',
  seed: 'test',
}

async function printed(id: string): Promise<FieldBookPrint> {
  const { manual, words } = await demoManual(id)
  const copy = renderFieldBook(manual, await assetsFor(words, 'inline'))
  return printFieldBook(press(), copy, { book: about, booklet: { ...about, seed: 'booklet' } })
}

describe.each([
  ['larkmoor', 396, 612],
  ['brambleford', 420.94, 595.28],
])('the printed field book of %s', (id, width, height) => {
  let print: FieldBookPrint
  beforeAll(async () => {
    print = await printed(id)
  })

  it('has pages of half its paper, which keep the rules of sound PDFs', async () => {
    const document = openDocument(print.book)
    const [w, h] = pageSize(document, 0)
    expect(Math.abs(w - width)).toBeLessThan(1)
    expect(Math.abs(h - height)).toBeLessThan(1)
    expect(brokenRules(document)).toEqual([])
  })

  it('shows no words on others and none beyond the edge, in the book and in the booklet', async () => {
    for (const bytes of [print.book, print.booklet]) {
      const pdf = await openBytes(bytes)
      for (const [i, words] of (await allWords(pdf)).entries()) {
        const { width: right, height: top } = (await pdf.getPage(i + 1)).getViewport({ scale: 1 })
        const boxes = textBoxes(words)
        expect(overlaps(boxes), `page ${i + 1}`).toEqual([])
        expect(
          boxes
            .filter((b) => b.left < 0 || b.right > right || b.low < 0 || b.high > top)
            .map((b) => b.text),
        ).toEqual([])
      }
    }
  })

  it('has on each side of the booklet the two pages that belong there', async () => {
    const [pages, sides] = await Promise.all(
      [print.book, print.booklet].map(async (bytes) => allWords(await openBytes(bytes))),
    )
    const letters = (words: readonly Word[] | undefined): string =>
      (words ?? []).map((w) => w.text.replace(/\s/g, '')).join('')
    expect(pages).toHaveLength(print.pages)
    for (const [i, [left, right]] of bookletSides(print.pages).entries()) {
      const side = sides?.[i] ?? []
      expect(letters(side.filter((w) => w.x < width))).toBe(letters(pages?.[left - 1]))
      expect(letters(side.filter((w) => w.x >= width))).toBe(letters(pages?.[right - 1]))
    }
  })

  it('is the same, byte for byte, when it is printed again', async () => {
    const again = await printed(id)
    expect(Buffer.compare(again.book, print.book)).toBe(0)
    expect(Buffer.compare(again.booklet, print.booklet)).toBe(0)
  })
})

describe.each(['larkmoor', 'brambleford', 'ostmere'])('the handout for volunteers of %s', (id) => {
  it('has two pages, which keep the rules of sound PDFs, with the number to call on both', async () => {
    const { manual, words } = await demoManual(id)
    const copy = renderHandout(manual, await assetsFor(words, 'inline'))
    const bytes = await printHandout(press(), copy, { ...about, seed: 'handout' })
    const document = openDocument(bytes)
    expect(pageCount(document)).toBe(2)
    expect(brokenRules(document)).toEqual([])
    for (const page of await allWords(await openBytes(bytes))) {
      expect(overlaps(textBoxes(page))).toEqual([])
      expect(page.map((w) => w.text).join(' ')).toContain(manual.emergency.number)
    }
  })
})

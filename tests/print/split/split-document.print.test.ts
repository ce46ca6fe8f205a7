import { describe, expect, it } from 'vitest'
import { finishOrdered, orderContent } from '../../../src/print/finish/finish-pdf.ts'
import { dictionaryAt, nameAt, textAt } from '../../../src/print/pdf/dictionaries.ts'
import { catalogOf, objectsOf, openDocument } from '../../../src/print/pdf/documents.ts'
import type { PdfDocument } from '../../../src/print/pdf/kinds.ts'
import { asDictionary } from '../../../src/print/pdf/objects.ts'
import { pageCount } from '../../../src/print/pdf/pages.ts'
import { printRaw } from '../../../src/print/press/print-pages.ts'
import { splitDocument } from '../../../src/print/split/split-document.ts'
import { brokenRules } from '../../support/pdf-rules/broken-rules.ts'
import { usePress } from '../../support/test-press.ts'

const press = usePress()

const page = (name: string): string =>
  `<section><h1>${name}</h1><table><tr><th scope="col">Head of ${name}</th></tr><tr><td>cell</td></tr></table><p><a href="tel:555-0100">call ${name}</a></p></section>`

async function printed(...names: readonly string[]): Promise<PdfDocument> {
  const css =
    'body{font-family:"Source Sans 3"}section{break-after:page}section:last-child{break-after:auto}'
  const document = openDocument(await printRaw(press(), { css, body: names.map(page).join('') }))
  orderContent(document)
  return document
}

const about = {
  title: 'Part',
  author: 'a',
  subject: 's',
  keywords: [],
  lang: 'en',
  date: '2027-06-14',
  creator: 'c',
  seed: 's',
}

const firstBookmark = (document: PdfDocument): string | undefined =>
  textAt(dictionaryAt(dictionaryAt(catalogOf(document), 'Outlines'), 'First'), 'Title')

describe('a document parted by its pages', () => {
  it('becomes sound documents, each with its own pages, structure and bookmarks', async () => {
    const parts = splitDocument(await printed('Rake', 'Roll', 'Water'), [1, 2])
    expect(parts.map(pageCount)).toEqual([1, 2])
    for (const [i, part] of parts.entries()) {
      const finished = openDocument(finishOrdered(part, about))
      expect(brokenRules(finished)).toEqual([])
      expect(firstBookmark(finished)).toBe(['Rake', 'Roll'][i])
    }
  })

  it('holds nothing of its neighbours', async () => {
    // So many that the browser puts some of them together under a node of the page tree.
    const names = Array.from({ length: 10 }, () => 'Rake')
    const [first] = splitDocument(await printed(...names), [1, 9])
    if (!first) throw new Error('no part')
    const pages = objectsOf(first).filter(
      ([, object]) => nameAt(asDictionary(object), 'Type') === 'Page',
    )
    expect(pages).toHaveLength(1)
    const [alone] = splitDocument(await printed('Rake'), [1])
    if (!alone) throw new Error('no part')
    const size = (d: PdfDocument): number => finishOrdered(d, about).length
    expect(size(first)).toBeLessThan(size(alone) * 1.1)
  })

  it('is refused when it has not as many pages', async () => {
    const document = await printed('Rake', 'Roll')
    expect(() => splitDocument(document, [1, 2])).toThrow('2 pages instead of 3')
  })
})

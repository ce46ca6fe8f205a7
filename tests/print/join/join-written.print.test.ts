import { describe, expect, it } from 'vitest'
import { finishPart, orderContent } from '../../../src/print/finish/finish-pdf.ts'
import { joinLinks } from '../../../src/print/join/join-links.ts'
import { joinWritten } from '../../../src/print/join/join-written.ts'
import type { WrittenPart } from '../../../src/print/join/write-part.ts'
import { dictionaryAt, entriesOf, nameAt, textAt } from '../../../src/print/pdf/dictionaries.ts'
import { catalogOf, openDocument } from '../../../src/print/pdf/documents.ts'
import type { PdfDocument } from '../../../src/print/pdf/kinds.ts'
import { annotationsOf, pageCount, pagesOf } from '../../../src/print/pdf/pages.ts'
import { printRaw } from '../../../src/print/press/print-pages.ts'
import { brokenRules } from '../../support/pdf-rules/broken-rules.ts'
import { about } from '../../support/sample-document.ts'
import { usePress } from '../../support/test-press.ts'

const press = usePress()
const elsewhere = 'https://elsewhere.invalid/#'

/** A part with a place of its own name, a table with ids, and a link to a place of another. */
const body = (name: string, to: string, words: string): string =>
  `<nav><a href="#${name}">here</a></nav><h1 id="${name}">${name}</h1><h2>${words}</h2>
<table><tr><th scope="col">Head of ${name}</th></tr><tr><td>cell</td></tr></table>
<p><a href="${elsewhere}${to}">go to ${to}</a></p>`

async function part(i: number, name: string, to: string, words = ''): Promise<WrittenPart> {
  const css = 'body{font-family:"Source Sans 3"}'
  const document = openDocument(
    await printRaw(press(), { css, body: body(name, to, words || name) }),
  )
  orderContent(document)
  joinLinks(document, elsewhere)
  return finishPart(document, { part: i, of: 2 }, 0)
}

const joined = async (parts: readonly WrittenPart[]): Promise<PdfDocument> =>
  openDocument(
    joinWritten(
      parts,
      parts.flatMap((p) => p.pages),
      about,
    ),
  )

describe('parts joined into one document', () => {
  it('are sound, and lead to each other', async () => {
    const whole = await joined([await part(0, 'rake', 'roll'), await part(1, 'roll', 'rake')])
    expect(pageCount(whole)).toBe(2)
    expect(brokenRules(whole)).toEqual([])
    const places = entriesOf(dictionaryAt(catalogOf(whole), 'Dests')).map(([name]) => name)
    expect(places).toEqual(['rake', 'roll'])
    const leads = pagesOf(whole).map((page) =>
      annotationsOf(whole, page).flatMap((a) => nameAt(a.dictionary, 'Dest') ?? []),
    )
    expect(leads).toEqual([
      ['rake', 'roll'],
      ['roll', 'rake'],
    ])
  })

  it('have their bookmarks in one chain, with those below them', async () => {
    const whole = await joined([await part(0, 'rake', 'roll'), await part(1, 'roll', 'rake')])
    const first = dictionaryAt(dictionaryAt(catalogOf(whole), 'Outlines'), 'First')
    const second = dictionaryAt(first, 'Next')
    expect([first, second].map((b) => textAt(b, 'Title'))).toEqual(['rake', 'roll'])
    expect(textAt(dictionaryAt(second, 'Prev'), 'Title')).toBe('rake')
    expect(textAt(dictionaryAt(second, 'First'), 'Title')).toBe('roll')
    expect(dictionaryAt(second, 'Next')).toBeUndefined()
  })

  it('stay as they are, to the byte, whatever the others are', async () => {
    const second = await part(1, 'roll', 'rake')
    const [one, other] = await Promise.all(
      ['rake', 'Rake twice, with many more words than before.'].map(async (words) =>
        joinWritten([await part(0, 'rake', 'roll', words), second], second.pages, about),
      ),
    )
    const own = Buffer.from(second.objects.bytes)
    expect(Buffer.from(one ?? []).equals(Buffer.from(other ?? []))).toBe(false)
    for (const bytes of [one, other]) expect(Buffer.from(bytes ?? []).includes(own)).toBe(true)
    expect(await part(1, 'roll', 'rake')).toEqual(second)
  })
})

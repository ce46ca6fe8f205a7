import { beforeAll, describe, expect, it } from 'vitest'
import { readStructure } from '../../../src/print/finish/structure/read-structure.ts'
import { itemsIn } from '../../../src/print/finish/structure/structure.ts'
import { dictionaryAt, entriesOf, nameAt } from '../../../src/print/pdf/dictionaries.ts'
import { catalogOf, openDocument } from '../../../src/print/pdf/documents.ts'
import type { PdfDocument } from '../../../src/print/pdf/kinds.ts'
import { annotationsOf, pagesOf } from '../../../src/print/pdf/pages.ts'
import { printSample } from '../../support/sample-document.ts'

let raw: PdfDocument
let finished: PdfDocument

beforeAll(async () => {
  const sample = await printSample()
  raw = openDocument(sample.raw)
  finished = openDocument(sample.finished)
})

describe('a finished document', () => {
  it('has lists with bodies, formulas, paragraphs for loose words, and no boxes without meaning', () => {
    const types = readStructure(finished)?.all.map((e) => e.type) ?? []
    const count = (type: string): number => types.filter((t) => t === type).length
    expect({
      NonStruct: count('NonStruct'),
      LI: count('LI'),
      LBody: count('LBody'),
      Formula: count('Formula'),
      Figure: count('Figure'),
      Form: count('Form'),
      TD: count('TD'),
    }).toEqual({ NonStruct: 0, LI: 3, LBody: 3, Formula: 1, Figure: 1, Form: 1, TD: 1 })
    const tops = readStructure(finished)?.tops[0]?.kids ?? []
    expect(tops.length).toBeGreaterThan(5)
    expect(tops.every((k) => k.kind === 'element')).toBe(true)
  })

  it('keeps all content of the page and its order', () => {
    const order = (document: PdfDocument): number[] =>
      [...itemsIn(readStructure(document)?.tops ?? [])].flatMap((k) =>
        k.kind === 'content' && k.page === pagesOf(document)[0]?.reference ? [k.mcid] : [],
      )
    const [before, after] = [order(raw), order(finished)]
    expect(after.length).toBeGreaterThan(8)
    expect(before.filter((n) => after.includes(n))).toEqual(after)
  })

  it('has lost the links that only noted places, and none of the places', () => {
    const links = pagesOf(finished).flatMap((page) =>
      annotationsOf(finished, page).filter((a) => nameAt(a.dictionary, 'Subtype') === 'Link'),
    )
    expect(links.length).toBe(1)
    const places = entriesOf(dictionaryAt(catalogOf(finished), 'Dests')).map(([name]) => name)
    expect(places.sort()).toEqual(['only-probed', 'table'])
  })
})

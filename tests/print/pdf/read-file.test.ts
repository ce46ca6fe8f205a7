import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  dictionaryAt,
  entriesOf,
  nameAt,
  numberAt,
  setEntry,
  textAt,
} from '../../../src/print/pdf/dictionaries.ts'
import {
  addObject,
  catalogOf,
  emptyDocument,
  openDocument,
  resolve,
} from '../../../src/print/pdf/documents.ts'
import type { Literal } from '../../../src/print/pdf/kinds.ts'
import { dictionary, plainText, unicodeText } from '../../../src/print/pdf/make-objects.ts'
import { asArray, asDictionary, asText, itemsOf } from '../../../src/print/pdf/objects.ts'
import { contentOf, pageCount, pageSize, pagesOf } from '../../../src/print/pdf/pages.ts'
import { saveDocument } from '../../../src/print/pdf/save-document.ts'
import { inside } from '../../../src/print/pdf/values.ts'
import { objectText } from '../../../src/print/pdf/write-object.ts'

/** A file with a table of its objects, written line by line as the browser does. */
function written(...objects: readonly string[]): Uint8Array {
  let text = '%PDF-1.4\n%\x80\x80\n'
  const places = objects.map((said, i) => {
    const at = text.length
    text += `${i + 1} 0 obj\n${said}\nendobj\n`
    return `${String(at).padStart(10, '0')} 00000 n \n`
  })
  const start = text.length
  text += `xref\n0 ${objects.length + 1}\n0000000000 65535 f \n${places.join('')}`
  text += `trailer\n<</Size ${objects.length + 1}/Root 1 0 R>>\nstartxref\n${start}\n%%EOF\n`
  return Buffer.from(text, 'latin1')
}

const [catalog, pages] = ['<</Type/Catalog/Pages 2 0 R>>', '<</Type/Pages/Kids[3 0 R]/Count 1>>']

describe('a file with a table of its objects', () => {
  it('is read with its pages, their inherited size, and streams whose length stands elsewhere', () => {
    const document = openDocument(
      written(
        catalog,
        '<</Type/Pages/Kids[6 0 R]/Count 1/MediaBox[0 0 612 792.5]>>',
        '<</Type/Page/Parent 6 0 R/Contents 4 0 R>>',
        '<</Length 5 0 R>>\nstream\nq endstream Q\nendstream',
        '13',
        '<</Type/Pages/Kids[3 0 R]/Count 1/Parent 2 0 R>>',
      ),
    )
    expect(pageCount(document)).toBe(1)
    expect(pageSize(document, 0)).toEqual([612, 792.5])
    const [page] = pagesOf(document)
    expect(page && contentOf(document, page)).toBe('q endstream Q')
  })

  // Examples of ISO 32000-1: 7.3.4.2 (balanced brackets, a line that goes on, an octal code of one to
  // three digits), 7.3.4.3 (a digit that is missing is zero), 7.3.5 (codes in names), 7.2.3 (comments).
  it('is read as the standard says', () => {
    const document = openDocument(
      written(
        `<</Type/Catalog/Pages 2 0 R/A(Strings may contain balanced parentheses \\(and ( ) so on\\).)
/B(These \\
two strings)/C(\\0533 \\53 \\245)/D<901FA>/Lime#20Green -.002/E +17/F[true false null]%a comment
/G<FEFF00e9>/H 34.5>>`,
        pages,
        '<</Type/Page/Parent 2 0 R>>',
      ),
    )
    const root = catalogOf(document)
    expect(textAt(root, 'A')).toBe('Strings may contain balanced parentheses (and ( ) so on).')
    expect(textAt(root, 'B')).toBe('These two strings')
    expect(textAt(root, 'C')).toBe('+3 + \xA5')
    expect(textAt(root, 'D')).toBe('\x90\x1F\xA0')
    expect(textAt(root, 'G')).toBe('é')
    expect(['Lime Green', 'E', 'H'].map((key) => numberAt(root, key))).toEqual([-0.002, 17, 34.5])
    const list = entriesOf(root).find(([key]) => key === 'F')?.[1]
    expect(itemsOf(asArray(list)).map((i) => inside(i))).toEqual([true, false, null])
    expect(objectText(inside(root))).toContain('/Lime#20Green -0.002')
  })

  it('says where nothing can be read', () => {
    const cut = written('<</Type/Catalog/Pages', pages, '<</Type/Page>>')
    expect(() => openDocument(cut)).toThrow(/no object at byte \d+/)
    expect(() => openDocument(Buffer.from('no PDF'))).toThrow()
  })
})

const literal: fc.Arbitrary<Literal> = fc.letrec<{ any: Literal }>((tie) => ({
  any: fc.oneof(
    { depthSize: 'small' },
    fc.string({ unit: 'binary-ascii', maxLength: 12 }),
    fc.integer({ min: -100_000, max: 100_000 }),
    fc.integer({ min: -1_000_000, max: 1_000_000 }).map((n) => n / 1000),
    fc.boolean(),
    fc.string({ unit: 'grapheme', maxLength: 8 }).map(unicodeText),
    fc.stringMatching(/^[ -'*-[\]-~]{0,12}$/).map(plainText),
    fc.array(tie('any'), { maxLength: 4 }),
    fc.dictionary(fc.stringMatching(/^[!-~]{1,6}$/), tie('any'), {
      maxKeys: 4,
      noNullPrototype: true,
    }),
  ),
})).any

describe('a file of ours', () => {
  it('says, when it is read again, what was written', () => {
    fc.assert(
      fc.property(fc.array(literal, { minLength: 1, maxLength: 250 }), (all) => {
        const document = emptyDocument()
        const before = all.map((said) => addObject(document, dictionary(document, { said })))
        setEntry(catalogOf(document), 'All', dictionary(document, { List: before }))
        const again = openDocument(saveDocument(document))
        const list = entriesOf(dictionaryAt(catalogOf(again), 'All'))[0]?.[1]
        const texts = itemsOf(asArray(list)).map((i) => objectText(inside(resolve(again, i) ?? i)))
        expect(texts).toEqual(before.map((i) => objectText(inside(resolve(document, i) ?? i))))
      }),
      { numRuns: 60 },
    )
  })

  it('keeps words in any letters', () => {
    const document = emptyDocument()
    const said = 'Bahnpflege für Größe → ½ 𝄞'
    setEntry(catalogOf(document), 'Said', unicodeText(said))
    const again = catalogOf(openDocument(saveDocument(document)))
    expect(textAt(again, 'Said')).toBe(said)
    expect(nameAt(again, 'Type')).toBe('Catalog')
    expect(asText(asDictionary(again))).toBeUndefined()
  })
})

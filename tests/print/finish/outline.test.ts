import { describe, expect, it } from 'vitest'
import { closeOutline, keepBookmarks } from '../../../src/print/finish/outline.ts'
import { dictionaryAt, numberAt, setEntry, textAt } from '../../../src/print/pdf/dictionaries.ts'
import { addObject, catalogOf, emptyDocument, resolve } from '../../../src/print/pdf/documents.ts'
import type { PdfDictionary, PdfDocument, PdfReference } from '../../../src/print/pdf/kinds.ts'
import { dictionary, unicodeText } from '../../../src/print/pdf/make-objects.ts'
import { asDictionary } from '../../../src/print/pdf/objects.ts'

type Tree = { readonly [title: string]: Tree }

/** Hangs bookmarks below a parent. @returns how many. */
function hang(document: PdfDocument, parent: PdfDictionary, tree: Tree): number {
  const titles = Object.keys(tree)
  const references = titles.map((title) =>
    addObject(document, dictionary(document, { Title: unicodeText(title) })),
  )
  const at = (i: number): PdfReference | undefined => references[i]
  const [first, last] = [at(0), references.at(-1)]
  if (first && last) {
    setEntry(parent, 'First', first)
    setEntry(parent, 'Last', last)
  }
  return references.reduce((sum, reference, i) => {
    const item = asDictionary(resolve(document, reference))
    if (!item) throw new Error('no bookmark')
    const [before, after] = [at(i - 1), at(i + 1)]
    if (before) setEntry(item, 'Prev', before)
    if (after) setEntry(item, 'Next', after)
    return sum + 1 + hang(document, item, tree[titles[i] ?? ''] ?? {})
  }, 0)
}

async function documentWith(tree: Tree): Promise<PdfDocument> {
  const document = emptyDocument()
  const root = dictionary(document, {})
  setEntry(catalogOf(document), 'Outlines', addObject(document, root))
  hang(document, root, tree)
  return document
}

/** What a viewer shows: every bookmark with those below it, followed by their chain. */
function treeOf(parent: PdfDictionary | undefined): Tree {
  const found: Record<string, Tree> = {}
  for (let item = dictionaryAt(parent, 'First'); item; item = dictionaryAt(item, 'Next'))
    found[textAt(item, 'Title') ?? ''] = treeOf(item)
  return found
}

const outlineOf = (document: PdfDocument): PdfDictionary | undefined =>
  dictionaryAt(catalogOf(document), 'Outlines')

const bookmarks: Tree = {
  '1 Rain': {
    '1.1 Seal': { 'Measure first': {}, 'A  Roll it': {}, 'With a blade': {}, 'Right when': {} },
    '1.2 Wait': { 'Right when': {} },
  },
}

describe('bookmarks', () => {
  it('are kept down to the second level, and below it where they are named', async () => {
    const document = await documentWith(bookmarks)
    keepBookmarks(document, ['Roll it', 'With a blade'])
    expect(treeOf(outlineOf(document))).toEqual({
      '1 Rain': { '1.1 Seal': { 'A  Roll it': {}, 'With a blade': {} }, '1.2 Wait': {} },
    })
  })

  it('are shown with only the first level unfolded', async () => {
    const document = await documentWith(bookmarks)
    keepBookmarks(document, ['Roll it'])
    closeOutline(document)
    const outline = outlineOf(document)
    const section = dictionaryAt(outline, 'First')
    const procedure = dictionaryAt(section, 'First')
    expect(numberAt(outline, 'Count')).toBe(1)
    expect(numberAt(section, 'Count')).toBe(-2)
    expect(numberAt(procedure, 'Count')).toBe(-1)
    expect(numberAt(dictionaryAt(procedure, 'Next'), 'Count')).toBeUndefined()
  })

  it('are no fault where a document has none', async () => {
    const document = emptyDocument()
    keepBookmarks(document, [])
    closeOutline(document)
    expect(outlineOf(document)).toBeUndefined()
  })
})

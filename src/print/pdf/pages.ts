import { arrayAt, dictionaryAt, hasEntry, lookUp, referenceAt, setEntry } from './dictionaries.ts'
import { catalogOf, resolve } from './documents.ts'
import type { PdfDictionary, PdfDocument, PdfObject, PdfReference } from './kinds.ts'
import { array, number } from './make-objects.ts'
import { asArray, asDictionary, asNumber, asReference, itemsOf } from './objects.ts'
import { streamText } from './streams.ts'

export type PdfPage = { readonly reference: PdfReference; readonly dictionary: PdfDictionary }

/** Pages below a node of the page tree (ISO 32000-1, 7.7.3). */
function pagesBelow(document: PdfDocument, node: PdfDictionary | undefined): readonly PdfPage[] {
  return itemsOf(arrayAt(node, 'Kids')).flatMap((kid) => {
    const reference = asReference(kid)
    const dictionary = asDictionary(resolve(document, kid))
    if (!reference || !dictionary) return []
    return hasEntry(dictionary, 'Kids')
      ? pagesBelow(document, dictionary)
      : [{ reference, dictionary }]
  })
}

/** All pages, in their order. */
export const pagesOf = (document: PdfDocument): readonly PdfPage[] =>
  pagesBelow(document, dictionaryAt(catalogOf(document), 'Pages'))

export const pageCount = (document: PdfDocument): number => pagesOf(document).length

/**
 * Gives a document these pages in this order, in place of those that it had.
 * @throws Error when the document has no page tree.
 */
export function setPages(document: PdfDocument, pages: readonly PdfReference[]): void {
  const catalog = catalogOf(document)
  const [tree, parent] = [dictionaryAt(catalog, 'Pages'), referenceAt(catalog, 'Pages')]
  if (!tree || !parent) throw new Error('the document has no page tree')
  for (const page of pages) {
    const dictionary = asDictionary(resolve(document, page))
    if (dictionary) setEntry(dictionary, 'Parent', parent)
  }
  setEntry(tree, 'Kids', array(document, pages))
  setEntry(tree, 'Count', number(pages.length))
}

/** An entry of a page, or of the nearest node above that has it (ISO 32000-1, 7.7.3.4). */
const inherited = (node: PdfDictionary | undefined, key: string): PdfObject | undefined =>
  node && (lookUp(node, key) ?? inherited(dictionaryAt(node, 'Parent'), key))

/** Width and height, points. @param page From 0. */
export function pageSize(document: PdfDocument, page: number): readonly [number, number] {
  const box = asArray(inherited(pagesOf(document)[page]?.dictionary, 'MediaBox'))
  const [left = 0, bottom = 0, right = 0, top = 0] = itemsOf(box).map(asNumber)
  return [right - left, top - bottom]
}

/** Points. @param page From 0. */
export const pageHeight = (document: PdfDocument, page: number): number =>
  pageSize(document, page)[1]

export const resourcesOf = (page: PdfPage): PdfDictionary | undefined =>
  asDictionary(inherited(page.dictionary, 'Resources'))

/** What is painted on a page: its streams are read as if white space stood between them. */
export function contentOf(document: PdfDocument, page: PdfPage): string {
  const contents = lookUp(page.dictionary, 'Contents')
  const list = asArray(contents)
  const streams = list ? itemsOf(list).map((s) => resolve(document, s)) : [contents]
  return streams.map((s) => streamText(s) ?? '').join('\n')
}

export type Annotation = {
  /** Nothing where the annotation stands in the page's list itself. */
  readonly reference: PdfReference | undefined
  readonly dictionary: PdfDictionary
}

/** Links, fields and other annotations of a page, in the order in which they are listed. */
export const annotationsOf = (document: PdfDocument, page: PdfPage): readonly Annotation[] =>
  itemsOf(arrayAt(page.dictionary, 'Annots')).flatMap((item) => {
    const dictionary = asDictionary(resolve(document, item))
    return dictionary ? [{ reference: asReference(item), dictionary }] : []
  })

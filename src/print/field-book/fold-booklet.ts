import { beginsMarked, operatorOf } from '../content/operator.ts'
import type { PdfAbout } from '../finish/finish-pdf.ts'
import { fixIdentity, writeMetadata } from '../finish/metadata.ts'
import { type Copier, copyReachable } from '../pdf/copy-reachable.ts'
import { dictionaryAt, setEntry } from '../pdf/dictionaries.ts'
import { addObject, catalogOf, emptyDocument } from '../pdf/documents.ts'
import type { PdfDocument, PdfReference } from '../pdf/kinds.ts'
import { dictionary, name } from '../pdf/make-objects.ts'
import { contentOf, type PdfPage, pageSize, pagesOf, resourcesOf, setPages } from '../pdf/pages.ts'
import { saveDocument } from '../pdf/save-document.ts'
import { contentStream } from '../pdf/streams.ts'
import { bookletSides } from './booklet-order.ts'

type Size = readonly [width: number, height: number]

/** What is painted, without tags: those of a page would lead nowhere on another. */
const withoutTags = (content: string): string =>
  content
    .split('\n')
    .filter((line) => {
      const operator = operatorOf(line)
      return operator !== 'EMC' && !beginsMarked(operator)
    })
    .join('\n')

/** A page as something that another page can show. */
function asForm(
  source: PdfDocument,
  page: PdfPage,
  to: PdfDocument,
  copy: Copier['copy'],
  [width, height]: Size,
): PdfReference {
  const resources = resourcesOf(page)
  const form = contentStream(to, withoutTags(contentOf(source, page)), {
    Type: 'XObject',
    Subtype: 'Form',
    BBox: [0, 0, width, height],
    Resources: resources ? copy(resources) : {},
  })
  return addObject(to, form)
}

/** Two pages beside each other on one side of a leaf. */
function sidePage(
  to: PdfDocument,
  [left, right]: readonly [PdfReference | undefined, PdfReference | undefined],
  [width, height]: Size,
): PdfReference {
  const show = `/Artifact BMC\nq /L Do Q\nq 1 0 0 1 ${width} 0 cm /R Do Q\nEMC`
  const page = dictionary(to, {
    Type: 'Page',
    MediaBox: [0, 0, 2 * width, height],
    Resources: { XObject: { L: left, R: right } },
    Contents: addObject(to, contentStream(to, show)),
  })
  return addObject(to, page)
}

/**
 * A book to fold: two of its pages on each side of a leaf, so that the leaves, laid in each other and
 * folded, read from the first page to the last. It is made to be printed and carries no tags; the
 * book itself is the file to read.
 */
export function foldBooklet(source: PdfDocument, about: PdfAbout): Uint8Array {
  const to = emptyDocument()
  const { copy } = copyReachable(source, to)
  const size = pageSize(source, 0)
  const forms = pagesOf(source).map((page) => asForm(source, page, to, copy, size))
  const sides = bookletSides(forms.length)
  setPages(
    to,
    sides.map(([left, right]) => sidePage(to, [forms[left - 1], forms[right - 1]], size)),
  )
  writeMetadata(to, about)
  const preferences = dictionaryAt(catalogOf(to), 'ViewerPreferences')
  // Printers that listen turn the leaf over on the right edge, and print it as large as it is.
  if (preferences) {
    setEntry(preferences, 'Duplex', name('DuplexFlipShortEdge'))
    setEntry(preferences, 'PrintScaling', name('None'))
  }
  fixIdentity(to, about.seed)
  return saveDocument(to)
}

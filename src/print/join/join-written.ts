import type { LabelRange } from '../binder/page-numbers.ts'
import type { PdfAbout } from '../finish/finish-pdf.ts'
import { fixIdentity, writeMetadata } from '../finish/metadata.ts'
import { labelPages } from '../finish/page-labels.ts'
import { roles } from '../finish/structure/renumber.ts'
import { setEntry } from '../pdf/dictionaries.ts'
import { addObject, catalogOf, reserveNumber, setObject } from '../pdf/documents.ts'
import type { PdfDocument, PdfReference } from '../pdf/kinds.ts'
import { dictionary, name, referenceTo } from '../pdf/make-objects.ts'
import { objectNumber } from '../pdf/objects.ts'
import { setPages } from '../pdf/pages.ts'
import { saveDocument } from '../pdf/save-document.ts'
import type { NumberedText } from '../pdf/write-objects.ts'
import { nextParentKey } from './part-place.ts'
import { startWhole, type Whole } from './whole.ts'
import type { WrittenPart } from './write-part.ts'

const references = (numbers: readonly (number | undefined)[]): readonly PdfReference[] =>
  numbers.flatMap((n) => (n === undefined ? [] : [referenceTo(n)]))

function hangStructure({ document, top }: Whole, parts: readonly WrittenPart[]): void {
  const made = (entries: Parameters<typeof dictionary>[1]) => dictionary(document, entries)
  const root = reserveNumber(document)
  const elements = references(parts.flatMap((p) => p.elements))
  setObject(document, top, made({ Type: 'StructElem', S: 'Document', P: root, K: elements }))
  const ids = references(parts.map((p) => p.ids))
  const tree = made({
    Type: 'StructTreeRoot',
    K: top,
    ParentTree: addObject(document, made({ Kids: references(parts.map((p) => p.parents)) })),
    ParentTreeNextKey: nextParentKey(parts.length),
    IDTree: ids.length > 0 ? addObject(document, made({ Kids: ids })) : undefined,
    RoleMap: roles,
  })
  setObject(document, root, tree)
  setEntry(catalogOf(document), 'StructTreeRoot', root)
  setEntry(catalogOf(document), 'MarkInfo', made({ Marked: true }))
}

/** Chains the bookmarks of all parts, shown when the document opens. */
function hangBookmarks(
  { document, outline }: Whole,
  parts: readonly WrittenPart[],
): readonly NumberedText[] {
  const all = parts.flatMap((p) => p.bookmarks)
  const [first, ...others] = references(all.map(([n]) => n))
  if (!first) return []
  const last = others.at(-1) ?? first
  const about = { Type: 'Outlines', First: first, Last: last, Count: all.length }
  setObject(document, outline, dictionary(document, about))
  setEntry(catalogOf(document), 'Outlines', outline)
  setEntry(catalogOf(document), 'PageMode', name('UseOutlines'))
  const parent = `/Parent ${objectNumber(outline)} 0 R`
  const to = (key: string, neighbour: NumberedText | undefined): string =>
    neighbour ? `/${key} ${neighbour[0]} 0 R` : ''
  return all.map(([n, text], i) => [
    n,
    `<<${text}${parent}${to('Prev', all[i - 1])}${to('Next', all[i + 1])}>>`,
  ])
}

/** The places of all parts. */
function hangTargets(
  document: PdfDocument,
  parts: readonly WrittenPart[],
): readonly NumberedText[] {
  const targets = parts.map((p) => p.targets).join('')
  if (targets === '') return []
  const own = reserveNumber(document)
  setEntry(catalogOf(document), 'Dests', own)
  return [[objectNumber(own), `<<${targets}>>`]]
}

/**
 * Joins parts into one finished document: what has been written of them is laid one after another,
 * and what belongs to the whole is written around it.
 * @param parts In the order of their places.
 * @param pages All their pages in the order in which they stand in the whole.
 */
export function joinWritten(
  parts: readonly WrittenPart[],
  pages: readonly number[],
  about: PdfAbout,
  labels?: readonly LabelRange[],
): Uint8Array {
  const whole = startWhole()
  const { document } = whole
  setPages(document, references(pages))
  hangStructure(whole, parts)
  const texts = [...hangTargets(document, parts), ...hangBookmarks(whole, parts)]
  writeMetadata(document, about)
  labelPages(document, labels)
  fixIdentity(document, about.seed)
  return saveDocument(document, { written: parts.map((p) => p.objects), texts })
}

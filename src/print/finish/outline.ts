import { dictionaryAt, numberAt, setEntry } from '../pdf/dictionaries.ts'
import { catalogOf } from '../pdf/documents.ts'
import type { PdfDocument } from '../pdf/kinds.ts'
import { name, number } from '../pdf/make-objects.ts'

/** Shows the bookmarks when the document opens, with only the first level unfolded. */
export function closeOutline(document: PdfDocument): void {
  const catalog = catalogOf(document)
  const outline = dictionaryAt(catalog, 'Outlines')
  if (!outline) return
  let top = 0
  for (let item = dictionaryAt(outline, 'First'); item; item = dictionaryAt(item, 'Next')) {
    top++
    const below = numberAt(item, 'Count') ?? 0
    if (below > 0) setEntry(item, 'Count', number(-below))
  }
  setEntry(outline, 'Count', number(top))
  setEntry(catalog, 'PageMode', name('UseOutlines'))
}

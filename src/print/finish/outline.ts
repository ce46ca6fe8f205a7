import { dictionaryAt, referenceAt, removeEntry, setEntry, textAt } from '../pdf/dictionaries.ts'
import { catalogOf, resolve } from '../pdf/documents.ts'
import type { PdfDictionary, PdfDocument, PdfReference } from '../pdf/kinds.ts'
import { name, number } from '../pdf/make-objects.ts'
import { asDictionary } from '../pdf/objects.ts'

/** Bookmarks below another, or of the first level. */
type Bookmarks = readonly { readonly at: PdfReference; readonly item: PdfDictionary }[]

function below(document: PdfDocument, parent: PdfDictionary): Bookmarks {
  const found: Bookmarks[number][] = []
  let at = referenceAt(parent, 'First')
  while (at) {
    const item = asDictionary(resolve(document, at))
    if (!item) throw new Error('a bookmark is not there')
    found.push({ at, item })
    at = referenceAt(item, 'Next')
  }
  return found
}

const rootOf = (document: PdfDocument): PdfDictionary | undefined =>
  dictionaryAt(catalogOf(document), 'Outlines')

function setOrRemove(item: PdfDictionary, key: string, to: PdfReference | undefined): void {
  if (to) setEntry(item, key, to)
  else removeEntry(item, key)
}

/** Chains bookmarks below their parent, which may be left without any. */
function chain(parent: PdfDictionary, items: Bookmarks): void {
  items.forEach(({ item }, i) => {
    setOrRemove(item, 'Prev', items[i - 1]?.at)
    setOrRemove(item, 'Next', items[i + 1]?.at)
  })
  setOrRemove(parent, 'First', items[0]?.at)
  setOrRemove(parent, 'Last', items.at(-1)?.at)
  if (items.length === 0) removeEntry(parent, 'Count')
}

const spaced = (text: string): string => text.replace(/\s+/g, ' ').trim()

/** Levels whose bookmarks all stay: the part, and what stands in it under a title of its own. */
const alwaysKept = 2

/**
 * Takes bookmarks out of a document as the browser has printed it, which has one for each heading:
 * the same few words (what is right, when to stop) would stand below every procedure and hide its
 * methods.
 * @param titles Headings below the second level that keep theirs; a letter may stand before them.
 */
export function keepBookmarks(document: PdfDocument, titles: readonly string[]): void {
  const isKept = (item: PdfDictionary): boolean => {
    const said = spaced(textAt(item, 'Title') ?? '')
    return titles.map(spaced).some((t) => said === t || said.endsWith(` ${t}`))
  }
  const prune = (parent: PdfDictionary, level: number): void => {
    const items = below(document, parent)
    for (const { item } of items) prune(item, level + 1)
    chain(parent, level < alwaysKept ? items : items.filter(({ item }) => isKept(item)))
  }
  const outline = rootOf(document)
  if (outline) prune(outline, 0)
}

/** Shows the bookmarks when the document opens, with only the first level unfolded. */
export function closeOutline(document: PdfDocument): void {
  const outline = rootOf(document)
  if (!outline) return
  const close = (parent: PdfDictionary): number => {
    const items = below(document, parent)
    for (const { item } of items) {
      const inside = close(item)
      if (inside > 0) setEntry(item, 'Count', number(-inside))
    }
    return items.length
  }
  setEntry(outline, 'Count', number(close(outline)))
  setEntry(catalogOf(document), 'PageMode', name('UseOutlines'))
}

import type { Structure } from '../../../src/print/finish/structure/structure.ts'
import { dictionaryAt, numberAt } from '../../../src/print/pdf/dictionaries.ts'
import { resolve } from '../../../src/print/pdf/documents.ts'
import type { PdfDocument, PdfObject, PdfReference } from '../../../src/print/pdf/kinds.ts'
import { asArray, asReference, itemsOf } from '../../../src/print/pdf/objects.ts'
import { contentOf, type PdfPage, pagesOf, resourcesOf } from '../../../src/print/pdf/pages.ts'
import { parentTree } from './parent-tree.ts'
import { type Scan, scanContent } from './scan-content.ts'

/** Elements by page and by the number of their marked content. */
type Claims = ReadonlyMap<PdfReference, ReadonlyMap<number, PdfReference>>

function claimsOf({ all }: Structure): { readonly claims: Claims; readonly faults: string[] } {
  const claims = new Map<PdfReference, Map<number, PdfReference>>()
  const faults: string[] = []
  for (const element of all) {
    for (const kid of element.kids) {
      if (kid.kind !== 'content') continue
      const of = claims.get(kid.page) ?? new Map<number, PdfReference>()
      claims.set(kid.page, of)
      if (of.has(kid.mcid))
        faults.push(`content ${kid.mcid} belongs to two elements: ${element.type}`)
      of.set(kid.mcid, element.reference)
    }
  }
  return { claims, faults }
}

/** Number of marked content whose properties stand in the resources of its page. */
const mcidOf = (page: PdfPage, properties: string): number | undefined =>
  numberAt(dictionaryAt(dictionaryAt(resourcesOf(page), 'Properties'), properties), 'MCID')

const few = (list: readonly unknown[]): string =>
  `${list.slice(0, 5).join(', ')}${list.length > 5 ? ` and ${list.length - 5} more` : ''}`

const named = (fault: string, list: readonly unknown[]): string[] =>
  list.length > 0 ? [`${fault}: ${few(list)}`] : []

/** What a page paints is marked, and marks are whole. */
const markFaults = ({ unmarked, mixed, balanced, mcids }: Scan): string[] => [
  ...[...unmarked].map(
    ([operator, times]) => `${times} times ${operator} paints outside content and artifacts`,
  ),
  ...named('artifact and content inside one another', mixed),
  ...(balanced ? [] : ['marked content is not closed, or closed twice']),
  ...(new Set(mcids).size < mcids.length ? ['a number of marked content is used twice'] : []),
]

/** Marked content, its element and the parent tree point at each other. */
function parentFaults(
  { mcids }: Scan,
  own: ReadonlyMap<number, PdfReference>,
  known: readonly PdfObject[],
): string[] {
  const there = new Set(mcids)
  const idle = known.flatMap((parent, mcid) =>
    asReference(parent) && own.get(mcid) !== parent && !there.has(mcid) ? [mcid] : [],
  )
  return [
    ...named(
      'content in no element',
      [...there].filter((mcid) => !own.has(mcid)),
    ),
    ...named(
      'content whose parent in the parent tree is not its element',
      [...there].filter((mcid) => own.has(mcid) && known[mcid] !== own.get(mcid)),
    ),
    ...named(
      'elements with content that is not on the page',
      [...own.keys()].filter((mcid) => !there.has(mcid)),
    ),
    ...named('parent tree with content that no element has', idle),
  ]
}

/**
 * Everything painted is content or an artifact, and content and structure know each other (ISO
 * 14289-1, 7.1 and 7.2; ISO 32000-1, 14.7.4.4).
 */
export function contentFaults(document: PdfDocument, structure: Structure): string[] {
  const parents = parentTree(document, structure)
  const { claims, faults } = claimsOf(structure)
  const onPages = pagesOf(document).flatMap((page, i) => {
    const content = contentOf(document, page)
    const scan = scanContent(content, (properties) => mcidOf(page, properties))
    const key = numberAt(page.dictionary, 'StructParents')
    const known = itemsOf(asArray(resolve(document, parents.get(key))))
    const own = claims.get(page.reference) ?? new Map<number, PdfReference>()
    return [...markFaults(scan), ...parentFaults(scan, own, known)].map(
      (fault) => `page ${i + 1}: ${fault}`,
    )
  })
  return [...faults, ...onPages]
}

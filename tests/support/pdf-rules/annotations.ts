import type { Structure } from '../../../src/print/finish/structure/structure.ts'
import { dictionaryAt, nameAt, numberAt, textAt } from '../../../src/print/pdf/dictionaries.ts'
import type { PdfDictionary, PdfDocument, PdfReference } from '../../../src/print/pdf/kinds.ts'
import { type Annotation, annotationsOf, pagesOf } from '../../../src/print/pdf/pages.ts'
import { parentTree } from './parent-tree.ts'

const wordsAt = (dictionary: PdfDictionary | undefined, key: string): string =>
  textAt(dictionary, key)?.trim() ?? ''

/** Element in which an annotation stands. */
type Holder = { readonly type: string; readonly reference: PdfReference }

/** Types of the elements in which annotations belong. */
const holderTypes: Readonly<Record<string, string>> = { Widget: 'Form', Link: 'Link' }

function wordFaults({ dictionary }: Annotation, kind: string, called: string): string[] {
  const field = dictionaryAt(dictionary, 'Parent')
  if (kind === 'Link' && wordsAt(dictionary, 'Contents') === '') return ['Link without Contents']
  const hasTooltip = [dictionary, field].some((d) => wordsAt(d, 'TU') !== '')
  return kind === 'Widget' && !hasTooltip ? [`${called} without TU`] : []
}

function placeFaults(
  { dictionary }: Annotation,
  holder: Holder | undefined,
  parents: ReturnType<typeof parentTree>,
  kind: string,
): string[] {
  if (!holder) return [' is not in the structure']
  const wanted = holderTypes[kind] ?? holder.type
  const key = numberAt(dictionary, 'StructParent')
  const isKnown = key !== undefined && parents.get(key) === holder.reference
  return [
    ...(holder.type === wanted ? [] : [` stands in ${holder.type}`]),
    ...(isKnown ? [] : [' whose parent in the parent tree is not its element']),
  ]
}

/** Links and fields have words and a place in the structure (ISO 14289-1, 7.18). */
export function annotationFaults(document: PdfDocument, structure: Structure): string[] {
  const parents = parentTree(document, structure)
  const holders = new Map<PdfReference | undefined, Holder>()
  for (const { type, reference, kids } of structure.all)
    for (const kid of kids) if (kid.kind === 'object') holders.set(kid.object, { type, reference })

  const faultsOf = (annotation: Annotation): string[] => {
    const { dictionary, reference } = annotation
    const kind = nameAt(dictionary, 'Subtype') ?? 'annotation'
    const title =
      wordsAt(dictionary, 'T') ||
      wordsAt(dictionaryAt(dictionary, 'Parent'), 'T') ||
      wordsAt(dictionary, 'Contents')
    const called = title === '' ? kind : `${kind} "${title}"`
    const place = placeFaults(annotation, holders.get(reference), parents, kind)
    return [...wordFaults(annotation, kind, called), ...place.map((fault) => `${called}${fault}`)]
  }
  return pagesOf(document).flatMap((page, i) => {
    const annotations = annotationsOf(document, page)
    const isWalked = annotations.length === 0 || nameAt(page.dictionary, 'Tabs') === 'S'
    const faults = [
      ...(isWalked ? [] : ['annotations, but Tabs is not S']),
      ...annotations.flatMap(faultsOf),
    ]
    return faults.map((fault) => `page ${i + 1}: ${fault}`)
  })
}

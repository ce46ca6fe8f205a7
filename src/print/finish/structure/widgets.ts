import { nameAt } from '../../pdf/dictionaries.ts'
import type { PdfDictionary, PdfDocument } from '../../pdf/kinds.ts'
import { annotationsOf, type PdfPage, pagesOf } from '../../pdf/pages.ts'
import { makeElement } from './make-element.ts'
import { type Element, itemsIn, type Structure } from './structure.ts'

const isWidget = (annotation: PdfDictionary): boolean => nameAt(annotation, 'Subtype') === 'Widget'

const hasWidgets = (document: PdfDocument, page: PdfPage): boolean =>
  annotationsOf(document, page).some((a) => isWidget(a.dictionary))

/**
 * Puts every field of a form into the reading order: after the words of its page, in the order in
 * which fields were made.
 */
export function tagWidgets(document: PdfDocument, { tops, all }: Structure): void {
  const [top] = tops
  if (!top || !pagesOf(document).some((page) => hasWidgets(document, page))) return
  const tagged = new Set(
    all.flatMap((e) => e.kids.flatMap((k) => (k.kind === 'object' ? [k.object] : []))),
  )
  const formsOf = (page: PdfPage): Element[] =>
    annotationsOf(document, page).flatMap(({ reference, dictionary }) => {
      if (!reference || tagged.has(reference) || !isWidget(dictionary)) return []
      const kid = { kind: 'object', page: page.reference, object: reference } as const
      return [makeElement(document, 'Form', [kid])]
    })
  const forms = pagesOf(document).map((page) => ({ page: page.reference, elements: formsOf(page) }))
  for (const { page, elements } of forms) {
    if (elements.length === 0) continue
    const last = top.kids.findLastIndex((k) =>
      [...itemsIn([k])].some((i) => i.kind === 'content' && i.page === page),
    )
    const at = last === -1 ? top.kids.length : last + 1
    top.kids.splice(at, 0, makeElement(document, 'Div', elements))
  }
}

import { PDFDict, type PDFDocument, PDFName, PDFRef } from '@cantoo/pdf-lib'
import { type Element, itemsIn, type Structure } from './tree.ts'

/**
 * Puts every field of a form into the reading order: after the words of its page, in the order in
 * which fields were made.
 */
export function tagWidgets(document: PDFDocument, { tops, all }: Structure): void {
  const [top] = tops
  if (!top) return
  const { context } = document
  const tagged = new Set(
    all.flatMap((e) => e.kids.flatMap((k) => (k.kind === 'object' ? [k.object] : []))),
  )
  const forms = document.getPages().flatMap((page) => {
    const widgets = (page.node.Annots()?.asArray() ?? []).filter(
      (a): a is PDFRef =>
        a instanceof PDFRef &&
        !tagged.has(a) &&
        context.lookup(a, PDFDict).get(PDFName.of('Subtype')) === PDFName.of('Widget'),
    )
    if (widgets.length === 0) return []
    const elements = widgets.map((object): Element => {
      const dict = context.obj({ Type: 'StructElem', S: 'Form' })
      return {
        kind: 'element',
        ref: context.register(dict),
        dict,
        type: 'Form',
        kids: [{ kind: 'object', page: page.ref, object }],
      }
    })
    return [{ page: page.ref, elements }]
  })
  for (const { page, elements } of forms) {
    const last = top.kids.findLastIndex((k) =>
      [...itemsIn([k])].some((i) => i.kind === 'content' && i.page === page),
    )
    const at = last === -1 ? top.kids.length : last + 1
    const dict = context.obj({ Type: 'StructElem', S: 'Div' })
    top.kids.splice(at, 0, {
      kind: 'element',
      ref: context.register(dict),
      dict,
      type: 'Div',
      kids: elements,
    })
  }
}

import {
  PDFArray,
  PDFDict,
  type PDFDocument,
  PDFName,
  PDFNull,
  PDFNumber,
  type PDFObject,
  PDFRef,
} from '@cantoo/pdf-lib'
import { treePairs, treeRefs } from '../../merge/trees.ts'

/** Marked content of a page. */
type Content = { readonly kind: 'content'; readonly page: PDFRef; readonly mcid: number }
/** An annotation that belongs into the reading order. */
type Annotated = { readonly kind: 'object'; readonly page: PDFRef; readonly object: PDFRef }
/** A structure element. Its kids are in reading order. */
export type Element = {
  readonly kind: 'element'
  readonly ref: PDFRef
  readonly dict: PDFDict
  type: string
  kids: Item[]
}
export type Item = Content | Annotated | Element

export type Structure = {
  readonly root: PDFDict
  readonly rootRef: PDFRef
  readonly tops: Element[]
  /** Every element as read, those that have since been taken out among them. */
  readonly all: readonly Element[]
}

const [nameS, nameK, nameP, namePg, nameObj, nameMcid] = ['S', 'K', 'P', 'Pg', 'Obj', 'MCID'].map(
  (n) => PDFName.of(n),
) as [PDFName, PDFName, PDFName, PDFName, PDFName, PDFName]

/** The structure tree of a document (ISO 32000-1, 14.7.2); nothing where the document has none. */
export function readStructure(document: PDFDocument): Structure | undefined {
  const { context } = document
  const rootRef = document.catalog.get(PDFName.of('StructTreeRoot'))
  const root = document.catalog.lookup(PDFName.of('StructTreeRoot'))
  if (!(rootRef instanceof PDFRef) || !(root instanceof PDFDict)) return undefined
  const all: Element[] = []
  const seen = new Set<PDFRef>()

  const readItem = (entry: PDFObject | undefined, page: PDFRef | undefined): Item[] => {
    const item = context.lookup(entry)
    if (item instanceof PDFNumber)
      return page ? [{ kind: 'content', page, mcid: item.asNumber() }] : []
    if (item instanceof PDFArray) return item.asArray().flatMap((i) => readItem(i, page))
    if (!(item instanceof PDFDict)) return []
    const own = item.get(namePg)
    const at = own instanceof PDFRef ? own : page
    const [mcid, object] = [item.get(nameMcid), item.get(nameObj)]
    if (mcid instanceof PDFNumber)
      return at ? [{ kind: 'content', page: at, mcid: mcid.asNumber() }] : []
    if (object instanceof PDFRef) return at ? [{ kind: 'object', page: at, object }] : []
    // Elements are indirect objects, and stand in one place only.
    if (!(entry instanceof PDFRef) || seen.has(entry)) return []
    seen.add(entry)
    const type = item.get(nameS)
    const element: Element = {
      kind: 'element',
      ref: entry,
      dict: item,
      type: type instanceof PDFName ? type.decodeText() : '',
      kids: readItem(item.get(nameK), own instanceof PDFRef ? own : undefined),
    }
    all.push(element)
    return [element]
  }
  const tops = readItem(root.get(nameK), undefined).filter((i) => i.kind === 'element')
  return { root, rootRef, tops, all }
}

/** Every item at and below these, in reading order. */
export function* itemsIn(items: readonly Item[]): Generator<Item> {
  for (const item of items) {
    yield item
    if (item.kind === 'element') yield* itemsIn(item.kids)
  }
}

const key = (dict: PDFDict | undefined, name: string): number | undefined => {
  const value = dict?.get(PDFName.of(name))
  return value instanceof PDFNumber ? value.asNumber() : undefined
}

/**
 * Writes a changed tree back: elements with their kids and parents, and from them the parent tree
 * anew.
 */
export function writeStructure(
  document: PDFDocument,
  { root, rootRef, tops, all }: Structure,
): void {
  const { context } = document
  const parents = new Map<number, PDFObject>()
  for (const [at, value] of treePairs(root.lookupMaybe(PDFName.of('ParentTree'), PDFDict), 'Nums'))
    if (at instanceof PDFNumber) parents.set(at.asNumber(), value)
  const ofPage = new Map<PDFRef, PDFObject[]>()
  for (const page of document.getPages()) {
    const at = key(page.node, 'StructParents')
    if (at === undefined) continue
    const list: PDFObject[] = []
    ofPage.set(page.ref, list)
    parents.delete(at)
  }
  const kept = new Set<PDFRef>()
  let nextKey =
    Math.max(
      -1,
      ...parents.keys(),
      ...document.getPages().map((p) => key(p.node, 'StructParents') ?? -1),
    ) + 1

  const hang = (element: Element, parent: PDFRef): void => {
    const { dict, ref, kids, type } = element
    kept.add(ref)
    const page = kids.find((k) => k.kind === 'content')?.page
    const entries = kids.map((kid): PDFObject => {
      if (kid.kind === 'element') {
        hang(kid, ref)
        return kid.ref
      }
      if (kid.kind === 'object') {
        const annotation = context.lookup(kid.object, PDFDict)
        const at = key(annotation, 'StructParent') ?? nextKey++
        annotation.set(PDFName.of('StructParent'), PDFNumber.of(at))
        parents.set(at, ref)
        return context.obj({ Type: 'OBJR', Obj: kid.object, Pg: kid.page })
      }
      const list = ofPage.get(kid.page)
      if (list) list[kid.mcid] = ref
      return kid.page === page
        ? PDFNumber.of(kid.mcid)
        : context.obj({ Type: 'MCR', Pg: kid.page, MCID: kid.mcid })
    })
    dict.set(nameS, PDFName.of(type))
    dict.set(nameP, parent)
    if (page === undefined) dict.delete(namePg)
    else dict.set(namePg, page)
    const [first] = entries
    if (first === undefined) dict.delete(nameK)
    else dict.set(nameK, entries.length === 1 ? first : context.obj(entries))
  }
  for (const top of tops) hang(top, rootRef)
  for (const element of all) if (!kept.has(element.ref)) context.delete(element.ref)

  for (const page of document.getPages()) {
    const [at, list] = [key(page.node, 'StructParents'), ofPage.get(page.ref)]
    if (at !== undefined && list)
      parents.set(at, context.obj(Array.from(list, (ref) => ref ?? PDFNull)))
  }
  const sorted = [...parents].sort(([a], [b]) => a - b)
  const [was, tree] = [
    root.get(PDFName.of('ParentTree')),
    context.obj({ Nums: sorted.flatMap(([at, value]) => [at, value]) }),
  ]
  if (was instanceof PDFRef) {
    for (const ref of treeRefs(was, context)) context.delete(ref)
    context.assign(was, tree)
  } else root.set(PDFName.of('ParentTree'), context.register(tree))
  root.set(PDFName.of('ParentTreeNextKey'), PDFNumber.of((sorted.at(-1)?.[0] ?? -1) + 1))
  root.set(nameK, context.obj(tops.map((t) => t.ref)))
  const ids = treePairs(root.lookupMaybe(PDFName.of('IDTree'), PDFDict), 'Names').filter(
    ([, ref]) => kept.has(ref as PDFRef),
  )
  for (const ref of treeRefs(root.get(PDFName.of('IDTree')), context)) context.delete(ref)
  if (ids.length > 0)
    root.set(PDFName.of('IDTree'), context.register(context.obj({ Names: ids.flat() })))
  else root.delete(PDFName.of('IDTree'))
}

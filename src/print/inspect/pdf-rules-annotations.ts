import {
  PDFArray,
  PDFDict,
  type PDFDocument,
  PDFHexString,
  PDFName,
  PDFNumber,
  type PDFObject,
  PDFRef,
  PDFString,
} from '@cantoo/pdf-lib'
import type { Structure } from '../finish/structure/tree.ts'
import { treePairs } from '../merge/trees.ts'

const name = (text: string): PDFName => PDFName.of(text)

const words = (value: PDFObject | undefined): string =>
  value instanceof PDFString || value instanceof PDFHexString ? value.decodeText().trim() : ''

const isName = (value: PDFObject | undefined, text: string): boolean =>
  value instanceof PDFName && value === name(text)

/** Links and fields have words and a place in the structure (ISO 14289-1, 7.18). */
export function annotationFaults(document: PDFDocument, structure: Structure): string[] {
  const parents = new Map(
    treePairs(structure.root.lookupMaybe(name('ParentTree'), PDFDict), 'Nums').map(
      ([key, value]) => [key instanceof PDFNumber ? key.asNumber() : -1, value],
    ),
  )
  const holders = new Map<PDFRef, { readonly type: string; readonly ref: PDFRef }>()
  for (const { type, ref, kids } of structure.all)
    for (const kid of kids) if (kid.kind === 'object') holders.set(kid.object, { type, ref })
  return document.getPages().flatMap((page, i) => {
    const annotations = page.node.Annots()?.asArray() ?? []
    const faults: string[] = []
    if (annotations.length > 0 && !isName(page.node.get(name('Tabs')), 'S'))
      faults.push('annotations, but Tabs is not S')
    for (const ref of annotations) {
      const annotation = document.context.lookup(ref, PDFDict)
      const subtype = annotation.lookup(name('Subtype'))
      const kind = subtype instanceof PDFName ? subtype.decodeText() : 'annotation'
      const field = annotation.lookupMaybe(name('Parent'), PDFDict)
      const title =
        words(annotation.lookup(name('T'))) ||
        words(field?.lookup(name('T'))) ||
        words(annotation.lookup(name('Contents')))
      const called = title === '' ? kind : `${kind} "${title}"`
      const holder = ref instanceof PDFRef ? holders.get(ref) : undefined
      if (kind === 'Link' && words(annotation.lookup(name('Contents'))) === '')
        faults.push('Link without Contents')
      if (
        kind === 'Widget' &&
        words(annotation.lookup(name('TU'))) === '' &&
        words(field?.lookup(name('TU'))) === ''
      )
        faults.push(`${called} without TU`)
      const wanted = kind === 'Widget' ? 'Form' : kind === 'Link' ? 'Link' : undefined
      if (!holder) faults.push(`${called} is not in the structure`)
      else {
        if (wanted !== undefined && holder.type !== wanted)
          faults.push(`${called} stands in ${holder.type}`)
        const key = annotation.get(name('StructParent'))
        if (!(key instanceof PDFNumber) || parents.get(key.asNumber()) !== holder.ref)
          faults.push(`${called} whose parent in the parent tree is not its element`)
      }
    }
    return faults.map((fault) => `page ${i + 1}: ${fault}`)
  })
}

/** Links and bookmarks lead somewhere. */
export function destinationFaults(document: PDFDocument): string[] {
  const { context, catalog } = document
  const pages = new Set<PDFObject | undefined>(document.getPages().map((p) => p.ref))
  const named = new Map<string, PDFObject>()
  for (const [key, value] of catalog.lookupMaybe(name('Dests'), PDFDict)?.entries() ?? [])
    named.set(key.decodeText(), value)
  for (const [key, value] of treePairs(
    catalog.lookupMaybe(name('Names'), PDFDict)?.lookupMaybe(name('Dests'), PDFDict),
    'Names',
  ))
    named.set(words(key), value)
  const isThere = (target: PDFObject | undefined): boolean => {
    const at = context.lookup(target)
    return at instanceof PDFArray
      ? pages.has(at.get(0))
      : at instanceof PDFDict && isThere(at.get(name('D')))
  }
  /** @returns the fault of a target, if it has one. */
  const check = (item: PDFDict): string | undefined => {
    const action = item.lookupMaybe(name('A'), PDFDict)
    if (action && !isName(action.get(name('S')), 'GoTo')) return undefined
    const target = context.lookup(action ? action.get(name('D')) : item.get(name('Dest')))
    if (target === undefined) return 'leads nowhere'
    const id = target instanceof PDFName ? target.decodeText() : words(target)
    if (id === '') return isThere(target) ? undefined : 'leads to a page that is not there'
    const found = named.get(id)
    return found && isThere(found) ? undefined : `leads to "${id}", which is not there`
  }
  const links = document.getPages().flatMap((page, i) =>
    (page.node.Annots()?.asArray() ?? []).flatMap((ref) => {
      const annotation = context.lookup(ref, PDFDict)
      const fault = isName(annotation.get(name('Subtype')), 'Link') ? check(annotation) : undefined
      return fault === undefined ? [] : [`page ${i + 1}: Link ${fault}`]
    }),
  )
  const bookmarks: string[] = []
  const walk = (first: PDFObject | undefined): void => {
    for (
      let item = context.lookup(first);
      item instanceof PDFDict;
      item = item.lookup(name('Next'))
    ) {
      const fault = check(item)
      if (fault !== undefined)
        bookmarks.push(`bookmark "${words(item.lookup(name('Title')))}" ${fault}`)
      walk(item.get(name('First')))
    }
  }
  walk(catalog.lookupMaybe(name('Outlines'), PDFDict)?.get(name('First')))
  return [...links, ...bookmarks]
}

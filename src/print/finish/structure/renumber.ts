import { PDFArray, PDFDict, type PDFDocument, PDFHexString, PDFName, type PDFObject, PDFString } from '@cantoo/pdf-lib'

/** Tags of the browser that PDF 1.7 does not know, and what they stand for. */
const roles = { Em: 'Span', Strong: 'Span', Aside: 'Sect' }

type Replace = (text: string) => PDFObject

const nodeId = (x: unknown): string | undefined => {
  if (!(x instanceof PDFString || x instanceof PDFHexString)) return undefined
  const text = x.decodeText()
  return /^node\d+$/.test(text) ? text : undefined
}

function walk(object: unknown, replace: Replace): void {
  if (object instanceof PDFDict) {
    for (const [key, value] of object.entries()) {
      const id = nodeId(value)
      if (id === undefined) walk(value, replace)
      else object.set(key, replace(id))
    }
  } else if (object instanceof PDFArray) {
    for (let i = 0; i < object.size(); i++) {
      const id = nodeId(object.get(i))
      if (id === undefined) walk(object.get(i), replace)
      else object.set(i, replace(id))
    }
  }
}

/** Elements with ids, attributes of tables, and the tree of ids. */
const keysOfIds = ['ID', 'A', 'Headers', 'Names', 'Kids'].map((key) => PDFName.of(key))

const mayHoldIds = (object: PDFObject): boolean => object instanceof PDFArray || (object instanceof PDFDict && keysOfIds.some((key) => object.has(key)))

/**
 * Ids of structure elements count on from whatever the browser printed before; numbered anew in their own order the same
 * document always gets the same ones.
 */
export function renumberStructure(document: PDFDocument): void {
  const tree = document.catalog.lookupMaybe(PDFName.of('StructTreeRoot'), PDFDict)
  tree?.set(PDFName.of('RoleMap'), document.context.obj(roles))
  const objects = document.context.enumerateIndirectObjects().map(([, object]) => object).filter(mayHoldIds)
  const ids = new Set<string>()
  const collect: Replace = (id) => {
    ids.add(id)
    return PDFString.of(id)
  }
  for (const object of objects) walk(object, collect)
  const order = [...ids].sort((a, b) => Number(a.slice(4)) - Number(b.slice(4)))
  const names = new Map(order.map((id, i) => [id, `n${String(i).padStart(6, '0')}`]))
  for (const object of objects) walk(object, (id) => PDFString.of(names.get(id) ?? id))
}

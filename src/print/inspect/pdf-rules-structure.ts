import {
  PDFArray,
  PDFDict,
  type PDFDocument,
  PDFHexString,
  PDFName,
  type PDFObject,
  PDFString,
} from '@cantoo/pdf-lib'
import { type Element, itemsIn, type Structure } from '../finish/structure/tree.ts'

/** Standard structure types of ISO 32000-1, 14.8.4. */
const standard = new Set(
  (
    'Document Part Art Sect Div BlockQuote Caption TOC TOCI Index NonStruct Private P H H1 H2 H3 H4 H5 H6 L LI Lbl LBody Table TR TH TD THead TBody TFoot ' +
    'Span Quote Note Reference BibEntry Code Link Annot Ruby RB RT RP Warichu WT WP Figure Formula Form'
  ).split(' '),
)

/** What may stand directly in an element. */
const within: Readonly<Record<string, readonly string[]>> = {
  L: ['LI', 'Caption'],
  LI: ['Lbl', 'LBody'],
  Table: ['TR', 'THead', 'TBody', 'TFoot', 'Caption'],
  THead: ['TR'],
  TBody: ['TR'],
  TFoot: ['TR'],
  TR: ['TH', 'TD'],
}

/** Where an element may stand. */
const inside: Readonly<Record<string, readonly string[]>> = {
  LI: ['L'],
  LBody: ['LI'],
  TR: ['Table', 'THead', 'TBody', 'TFoot'],
  TH: ['TR'],
  TD: ['TR'],
  THead: ['Table'],
  TBody: ['Table'],
  TFoot: ['Table'],
}

const spoken = (value: PDFObject | undefined): boolean =>
  (value instanceof PDFString || value instanceof PDFHexString) && value.decodeText().trim() !== ''

function hasScope(cell: Element): boolean {
  const attributes = cell.dict.lookup(PDFName.of('A'))
  const list =
    attributes instanceof PDFArray
      ? attributes.asArray().map((a) => cell.dict.context.lookup(a))
      : [attributes]
  return list.some((a) => a instanceof PDFDict && a.has(PDFName.of('Scope')))
}

/**
 * Elements are of known types, stand where they may, and say what cannot be read (ISO 14289-1, 7.1
 * to 7.7).
 */
export function structureFaults(document: PDFDocument, { root, tops }: Structure): string[] {
  const faults: string[] = []
  const pages = new Map(document.getPages().map((p, i) => [p.ref, i + 1]))
  const roles = root.lookupMaybe(PDFName.of('RoleMap'), PDFDict)
  const standardOf = (type: string): string => {
    let name = type
    // A chain of roles longer than that goes round in a circle.
    for (let i = 0; i < 8 && !standard.has(name); i++) {
      const next = roles?.get(PDFName.of(name))
      if (!(next instanceof PDFName)) break
      name = next.decodeText()
    }
    return name
  }
  const place = (element: Element): string => {
    for (const item of itemsIn([element]))
      if (item.kind !== 'element') return `page ${pages.get(item.page) ?? '?'}: `
    return ''
  }
  let level = 0
  const check = (element: Element, parent: string): void => {
    const type = standardOf(element.type)
    const say = (fault: string): number => faults.push(`${place(element)}${fault}`)
    if (!standard.has(type)) say(`unknown type ${element.type}`)
    const heading = /^H([1-6])$/.exec(type)
    if (heading) {
      const next = Number(heading[1])
      if (next > level + 1)
        say(level === 0 ? `the first heading is ${type}` : `heading ${type} after H${level}`)
      level = next
    }
    if (
      (type === 'Figure' || type === 'Formula') &&
      !spoken(element.dict.lookup(PDFName.of('Alt'))) &&
      !spoken(element.dict.lookup(PDFName.of('ActualText')))
    )
      say(`${type} without Alt`)
    if (type === 'TH' && !hasScope(element)) say('TH without Scope')
    const allowed = inside[type]
    if (allowed && !allowed.includes(parent)) say(`${type} in ${parent}`)
    const holds = within[type]
    for (const kid of element.kids) {
      if (kid.kind === 'element') {
        const kidType = standardOf(kid.type)
        if (holds && !holds.includes(kidType)) say(`${type} holds ${kidType}`)
        check(kid, type)
      } else if (holds) say(`${type} holds content of its own`)
    }
    if (element.kids.length === 0 && !['TD', 'TH', 'TR', 'Document'].includes(type))
      say(`empty ${type}`)
  }
  for (const top of tops) check(top, 'StructTreeRoot')
  return faults
}

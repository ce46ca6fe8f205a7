import {
  type Element,
  itemsIn,
  type Structure,
} from '../../../src/print/finish/structure/structure.ts'
import {
  dictionaryAt,
  hasEntry,
  lookUp,
  nameAt,
  textAt,
} from '../../../src/print/pdf/dictionaries.ts'
import { resolve } from '../../../src/print/pdf/documents.ts'
import type { PdfDictionary, PdfDocument, PdfReference } from '../../../src/print/pdf/kinds.ts'
import { asArray, asDictionary, itemsOf } from '../../../src/print/pdf/objects.ts'
import { pagesOf } from '../../../src/print/pdf/pages.ts'

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

const mayBeEmpty = ['TD', 'TH', 'TR', 'Document']

const isSpoken = (element: Element): boolean =>
  ['Alt', 'ActualText'].some((key) => (textAt(element.dictionary, key)?.trim() ?? '') !== '')

function hasScope(document: PdfDocument, cell: Element): boolean {
  const attributes = lookUp(cell.dictionary, 'A')
  const list = asArray(attributes)
  return (list ? itemsOf(list) : [attributes]).some((item) => {
    const own = asDictionary(resolve(document, item))
    return own !== undefined && hasEntry(own, 'Scope')
  })
}

/** The standard type for which a type stands. */
function standardOf(type: string, roles: PdfDictionary | undefined): string {
  let name = type
  // A chain of roles longer than that goes round in a circle.
  for (let i = 0; i < 8 && !standard.has(name); i++) {
    const next = nameAt(roles, name)
    if (next === undefined) break
    name = next
  }
  return name
}

type Check = {
  readonly document: PdfDocument
  readonly roles: PdfDictionary | undefined
  readonly pages: ReadonlyMap<PdfReference, number>
  readonly faults: string[]
  /** Of the last heading. */
  level: number
}

function placeOf({ pages }: Check, element: Element): string {
  for (const item of itemsIn([element]))
    if (item.kind !== 'element') return `page ${pages.get(item.page) ?? '?'}: `
  return ''
}

/** Headings begin with the first level and skip none. */
function headingFaults(check: Check, type: string): string[] {
  const heading = /^H([1-6])$/.exec(type)
  if (!heading) return []
  const [before, now] = [check.level, Number(heading[1])]
  check.level = now
  if (now <= before + 1) return []
  return [before === 0 ? `the first heading is ${type}` : `heading ${type} after H${before}`]
}

/** What is wrong with an element by itself, its place included. */
function ownFaults(check: Check, element: Element, type: string, parent: string): string[] {
  const isPicture = type === 'Figure' || type === 'Formula'
  const lacksScope = type === 'TH' && !hasScope(check.document, element)
  return [
    ...(standard.has(type) ? [] : [`unknown type ${element.type}`]),
    ...headingFaults(check, type),
    ...(isPicture && !isSpoken(element) ? [`${type} without Alt`] : []),
    ...(lacksScope ? ['TH without Scope'] : []),
    ...(inside[type]?.includes(parent) === false ? [`${type} in ${parent}`] : []),
    ...(element.kids.length === 0 && !mayBeEmpty.includes(type) ? [`empty ${type}`] : []),
  ]
}

function checkElement(check: Check, element: Element, parent: string): void {
  const type = standardOf(element.type, check.roles)
  const say = (fault: string): number => check.faults.push(`${placeOf(check, element)}${fault}`)
  ownFaults(check, element, type, parent).forEach(say)
  const holds = within[type]
  for (const kid of element.kids) {
    const kidType = kid.kind === 'element' ? standardOf(kid.type, check.roles) : undefined
    if (holds && !holds.includes(kidType ?? ''))
      say(`${type} holds ${kidType ?? 'content of its own'}`)
    if (kid.kind === 'element') checkElement(check, kid, type)
  }
}

/**
 * Elements are of known types, stand where they may, and say what cannot be read (ISO 14289-1, 7.1
 * to 7.7).
 */
export function structureFaults(document: PdfDocument, { root, tops }: Structure): string[] {
  const check: Check = {
    document,
    roles: dictionaryAt(root, 'RoleMap'),
    pages: new Map(pagesOf(document).map((p, i) => [p.reference, i + 1])),
    faults: [],
    level: 0,
  }
  for (const top of tops) checkElement(check, top, 'StructTreeRoot')
  return check.faults
}

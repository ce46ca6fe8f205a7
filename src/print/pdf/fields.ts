import { arrayAt, setEntry } from './dictionaries.ts'
import { addObject, catalogOf, reserveNumber, setObject } from './documents.ts'
import type { LiteralRecord, PdfDocument, PdfReference } from './kinds.ts'
import { array, dictionary, plainText, unicodeText } from './make-objects.ts'
import { itemsOf } from './objects.ts'
import { pagesOf } from './pages.ts'
import { contentStream } from './streams.ts'

/** A place to write on a page of a form. */
export type Field = {
  readonly kind: 'check' | 'line' | 'lines'
  /** Dots part the names of groups from those of the fields in them. */
  readonly name: string
  /** What a viewer says of it where the pointer rests, and a reader for the blind reads. */
  readonly tooltip: string
  /** Page, from 0. */
  readonly page: number
  /** Points from the page's lower left. */
  readonly box: {
    readonly x: number
    readonly y: number
    readonly width: number
    readonly height: number
  }
}

const fontName = 'Typing'

/** Type of size 0 is as large as the field has room for: whatever is typed stays in it. */
const typing = plainText(`/${fontName} 0 Tf 0 g`)

/** Printed with its page (ISO 32000-1, table 165); more than one line (table 228). */
const [printed, multiline] = [4, 4096]

const rounded = (value: number): number => Math.round(value * 1000) / 1000

/** Places of a check mark's ends and its corner, as shares of half the box, from its middle. */
const mark = [
  [-0.675, -0.076],
  [-0.25, -0.49],
  [0.69, 0.475],
] as const

type Size = Pick<Field['box'], 'width' | 'height'>

function markIn({ width, height }: Size): string {
  const half = Math.min(width, height) / 2
  const [from, over, to] = mark.map(([x, y]) =>
    [width / 2 + x * half, height / 2 + y * half].map(rounded).join(' '),
  )
  return `q 0 G 1.5 w ${from} m ${over} l ${to} l S Q`
}

/** What a box of each size shows with and without its mark, the same for all of a size. */
function appearancesIn(document: PdfDocument): (size: Size) => LiteralRecord {
  const made = new Map<string, LiteralRecord>()
  const shown = (size: Size, content: string): PdfReference => {
    const box = [0, 0, rounded(size.width), rounded(size.height)]
    const about = { Type: 'XObject', Subtype: 'Form', BBox: box, Resources: {} }
    return addObject(document, contentStream(document, content, about))
  }
  return (size) => {
    const key = [size.width, size.height].map(rounded).join('x')
    const known = made.get(key)
    if (known) return known
    const both = { N: { Yes: shown(size, markIn(size)), Off: shown(size, '') } }
    made.set(key, both)
    return both
  }
}

/** A field, or a group of them, with the last part of its name. */
type Node = { readonly reference: PdfReference; readonly kids: PdfReference[] }

/** The groups of a document's fields, made as they are asked for. */
function groupsIn(document: PdfDocument): {
  readonly groupAt: (names: readonly string[]) => Node | undefined
  readonly top: PdfReference[]
  readonly write: () => void
} {
  const groups = new Map<string, Node & { readonly name: string; readonly of: Node | undefined }>()
  const top: PdfReference[] = []
  const groupAt = (names: readonly string[]): Node | undefined => {
    const name = names.at(-1)
    if (name === undefined) return undefined
    const path = names.join('.')
    const known = groups.get(path)
    if (known) return known
    const of = groupAt(names.slice(0, -1))
    const group = { reference: reserveNumber(document), kids: [], name, of }
    groups.set(path, group)
    ;(of?.kids ?? top).push(group.reference)
    return group
  }
  const write = (): void => {
    for (const { reference, kids, name, of } of groups.values()) {
      const about = { T: unicodeText(name), Parent: of?.reference, Kids: kids }
      setObject(document, reference, dictionary(document, about))
    }
  }
  return { groupAt, top, write }
}

/**
 * Lays empty fields over the pages of a document.
 * @param font In which they are filled in.
 */
export function addFields(
  document: PdfDocument,
  fields: readonly Field[],
  font: PdfReference,
): void {
  const pages = pagesOf(document)
  const appearanceOf = appearancesIn(document)
  const { groupAt, top, write } = groupsIn(document)
  const added = pages.map((): PdfReference[] => [])
  for (const { kind, name, tooltip, page, box } of fields) {
    const names = name.split('.')
    const group = groupAt(names.slice(0, -1))
    const isCheck = kind === 'check'
    const about: LiteralRecord = {
      Type: 'Annot',
      Subtype: 'Widget',
      FT: isCheck ? 'Btn' : 'Tx',
      T: unicodeText(names.at(-1) ?? ''),
      TU: unicodeText(tooltip),
      Parent: group?.reference,
      P: pages[page]?.reference,
      Rect: [box.x, box.y, box.x + box.width, box.y + box.height].map(rounded),
      F: printed,
      ...(isCheck
        ? { V: 'Off', AS: 'Off', AP: appearanceOf(box) }
        : { DA: typing, Ff: kind === 'lines' ? multiline : undefined }),
    }
    const reference = addObject(document, dictionary(document, about))
    ;(group?.kids ?? top).push(reference)
    added[page]?.push(reference)
  }
  write()
  for (const [i, { dictionary: page }] of pages.entries()) {
    const all = [...itemsOf(arrayAt(page, 'Annots')), ...(added[i] ?? [])]
    if (all.length > 0) setEntry(page, 'Annots', array(document, all))
  }
  const fonts = { Font: { [fontName]: font } }
  const form = dictionary(document, { Fields: top, DR: fonts, DA: typing })
  setEntry(catalogOf(document), 'AcroForm', addObject(document, form))
}

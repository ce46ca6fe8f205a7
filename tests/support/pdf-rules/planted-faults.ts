import { readStructure } from '../../../src/print/finish/structure/read-structure.ts'
import type { Element } from '../../../src/print/finish/structure/structure.ts'
import {
  arrayAt,
  dictionaryAt,
  entriesOf,
  nameAt,
  referenceAt,
  removeEntry,
  setEntry,
} from '../../../src/print/pdf/dictionaries.ts'
import { addObject, catalogOf, resolve, setObject } from '../../../src/print/pdf/documents.ts'
import { informationReference } from '../../../src/print/pdf/information.ts'
import type { PdfArray, PdfDictionary, PdfDocument } from '../../../src/print/pdf/kinds.ts'
import { dictionary, name, number, plainText } from '../../../src/print/pdf/make-objects.ts'
import { asArray, asDictionary, itemsOf, setItem } from '../../../src/print/pdf/objects.ts'
import { annotationsOf, contentOf, pagesOf, resourcesOf } from '../../../src/print/pdf/pages.ts'
import { contentStream, rawStream } from '../../../src/print/pdf/streams.ts'

/** A rule, how a sound sample document is made to break it, and how the fault is named. */
export type Fault = readonly [rule: string, plant: (document: PdfDocument) => void, named: RegExp]

function there<T>(found: T | undefined, what: string): T {
  if (found === undefined) throw new Error(`there is no ${what}`)
  return found
}

const first = (document: PdfDocument, type: string): Element =>
  there(
    readStructure(document)?.all.find((e) => e.type === type),
    type,
  )

const retype =
  (type: string, to: string) =>
  (document: PdfDocument): void =>
    setEntry(first(document, type).dictionary, 'S', name(to))

const without =
  (type: string, key: string) =>
  (document: PdfDocument): void =>
    removeEntry(first(document, type).dictionary, key)

const withoutInCatalog =
  (key: string) =>
  (document: PdfDocument): void =>
    removeEntry(catalogOf(document), key)

const annotation = (document: PdfDocument, subtype: string): PdfDictionary =>
  there(
    pagesOf(document)
      .flatMap((page) => annotationsOf(document, page))
      .find(({ dictionary }) => nameAt(dictionary, 'Subtype') === subtype)?.dictionary,
    subtype,
  )

/** Changes what is painted on the first page. */
const rewritten =
  (change: (content: string, document: PdfDocument) => string) =>
  (document: PdfDocument): void => {
    const page = there(pagesOf(document)[0], 'page')
    const content = change(contentOf(document, page), document)
    const reference = there(referenceAt(page.dictionary, 'Contents'), 'content')
    setObject(document, reference, contentStream(document, content))
  }

/** Number of the content of the first heading. */
function headingMark(document: PdfDocument): number {
  const [kid] = first(document, 'H1').kids
  return kid?.kind === 'content' ? kid.mcid : -1
}

/** Parents of the content of the first page. */
function firstParents(document: PdfDocument): PdfArray {
  const tree = dictionaryAt(dictionaryAt(catalogOf(document), 'StructTreeRoot'), 'ParentTree')
  return there(asArray(resolve(document, itemsOf(arrayAt(tree, 'Nums'))[1])), 'parents')
}

function font(document: PdfDocument): PdfDictionary {
  const fonts = dictionaryAt(resourcesOf(there(pagesOf(document)[0], 'page')), 'Font')
  return there(asDictionary(resolve(document, entriesOf(fonts)[0]?.[1])), 'font')
}

const bookmark = (document: PdfDocument): PdfDictionary =>
  there(dictionaryAt(dictionaryAt(catalogOf(document), 'Outlines'), 'First'), 'bookmark')

const emptyXmpTitle =
  '<dc:title><rdf:Alt><rdf:li xml:lang="x-default"></rdf:li></rdf:Alt></dc:title>'

const ofDocument: readonly Fault[] = [
  [
    'the document is marked',
    (d) => setEntry(catalogOf(d), 'MarkInfo', dictionary(d, { Marked: false })),
    /Marked is not true/,
  ],
  ['it has a structure', withoutInCatalog('StructTreeRoot'), /no structure tree/],
  ['it has a language', withoutInCatalog('Lang'), /no language/],
  [
    'it has a title',
    (d) => {
      const information = asDictionary(resolve(d, informationReference(d)))
      setEntry(there(information, 'information'), 'Title', plainText(''))
    },
    /no title in the document information/,
  ],
  ['it has metadata', withoutInCatalog('Metadata'), /no XMP metadata/],
  [
    'its metadata has a title',
    (d) =>
      setEntry(
        catalogOf(d),
        'Metadata',
        addObject(d, rawStream(d, new TextEncoder().encode(emptyXmpTitle))),
      ),
    /no title in the XMP/,
  ],
  ['its title is displayed', withoutInCatalog('ViewerPreferences'), /DisplayDocTitle/],
]

const ofContent: readonly Fault[] = [
  [
    'all that is painted is marked',
    rewritten((c) => `${c}\n0 0 5 5 re\nf`),
    /page 1: 1 times f paints outside/,
  ],
  [
    'that also holds in one line',
    rewritten((c) => `${c} BT (EMC /P <</MCID 0>> BDC) Tj ET`),
    /page 1: 1 times Tj paints outside/,
  ],
  [
    'content and artifacts lie apart',
    rewritten((c) => c.replace(/MCID \d+ >>BDC\n/, '$&/Artifact BMC\nEMC\n')),
    /page 1: artifact and content inside one another: \d/,
  ],
  [
    'marked content is closed',
    rewritten((c) => `${c}\n/Artifact BMC`),
    /page 1: marked content is not closed/,
  ],
  [
    'a number marks content once',
    rewritten((c) => `${c}\n/P <</MCID 0>> BDC EMC /P <</MCID 0>> BDC EMC`),
    /page 1: a number of marked content is used twice/,
  ],
  ['content belongs to an element', without('H1', 'K'), /page 1: content in no element: \d/],
  [
    'content belongs to one element',
    (d) => setEntry(first(d, 'P').dictionary, 'K', number(headingMark(d))),
    /belongs to two elements/,
  ],
  [
    'content of an element is on the page',
    rewritten((c, d) => c.replace(`<</MCID ${headingMark(d)} >>BDC`, '<</MCID 99 >>BDC')),
    /page 1: elements with content that is not on the page: \d/,
  ],
  [
    'content finds its element',
    (d) => setItem(firstParents(d), headingMark(d), first(d, 'Table').reference),
    /page 1: content whose parent in the parent tree is not its element: \d/,
  ],
]

const ofStructure: readonly Fault[] = [
  ['types are known', retype('Em', 'Whatever'), /page 1: unknown type Whatever/],
  ['headings begin with the first level', retype('H1', 'H2'), /page 1: the first heading is H2/],
  ['headings skip no level', retype('H2', 'H3'), /page 2: heading H3 after H1/],
  ['figures have words', without('Figure', 'Alt'), /page 2: Figure without Alt/],
  ['formulas have words', without('Formula', 'Alt'), /page 2: Formula without Alt/],
  ['heads of tables have a scope', without('TH', 'A'), /page 2: TH without Scope/],
  ['a list holds items', retype('LI', 'P'), /page 1: L holds P/],
  ['an item holds label and body', retype('LBody', 'Div'), /page 1: LI holds Div/],
  ['a row stands in a table', retype('Table', 'Div'), /page 2: TR in Div/],
  ['a cell stands in a row', retype('TR', 'Div'), /page 2: TH in Div/],
  ['no element is empty', without('Em', 'K'), /empty Span/],
]

const ofAnnotations: readonly Fault[] = [
  [
    'links have words',
    (d) => removeEntry(annotation(d, 'Link'), 'Contents'),
    /page 1: Link without Contents/,
  ],
  [
    'links are in the structure',
    (d) => setEntry(first(d, 'Link').dictionary, 'K', number(2)),
    /page 1: Link.* is not in the structure/,
  ],
  [
    'links find their element',
    (d) => setEntry(annotation(d, 'Link'), 'StructParent', number(0)),
    /page 1: Link.* whose parent in the parent tree/,
  ],
  [
    'links lead somewhere',
    (d) => setEntry(annotation(d, 'Link'), 'Dest', name('gone')),
    /page 1: Link leads to "gone"/,
  ],
  [
    'bookmarks lead somewhere',
    (d) => setEntry(bookmark(d), 'Dest', name('gone')),
    /bookmark "One" leads to "gone"/,
  ],
  [
    'fields have a tooltip',
    (d) => {
      const widget = annotation(d, 'Widget')
      for (const holder of [widget, dictionaryAt(widget, 'Parent')])
        if (holder) removeEntry(holder, 'TU')
    },
    /page 2: Widget "name" without TU/,
  ],
  [
    'a tooltip says something',
    (d) => {
      const widget = annotation(d, 'Widget')
      for (const holder of [widget, dictionaryAt(widget, 'Parent')])
        if (holder) setEntry(holder, 'TU', plainText(' '))
    },
    /page 2: Widget "name" without TU/,
  ],
  [
    'fields are forms in the structure',
    retype('Form', 'Div'),
    /page 2: Widget "name" stands in Div/,
  ],
  [
    'fields are in the structure',
    without('Form', 'K'),
    /page 2: Widget "name" is not in the structure/,
  ],
  [
    'pages with annotations are walked by structure',
    (d) => setEntry(there(pagesOf(d)[1], 'page').dictionary, 'Tabs', name('R')),
    /page 2: annotations, but Tabs is not S/,
  ],
]

const ofFonts: readonly Fault[] = [
  [
    'fonts say what their shapes mean',
    (d) => removeEntry(font(d), 'ToUnicode'),
    /font \S+ without ToUnicode/,
  ],
  [
    'fonts are embedded',
    (d) => {
      const [below] = itemsOf(arrayAt(font(d), 'DescendantFonts'))
      removeEntry(there(asDictionary(resolve(d, below)), 'descendant'), 'FontDescriptor')
    },
    /font \S+ is not embedded/,
  ],
]

/** Every rule broken once. */
export const faults: readonly Fault[] = [
  ...ofDocument,
  ...ofContent,
  ...ofStructure,
  ...ofAnnotations,
  ...ofFonts,
]

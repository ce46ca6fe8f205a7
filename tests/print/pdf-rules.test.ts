import {
  decodePDFRawStream,
  PDFArray,
  PDFDict,
  PDFDocument,
  PDFName,
  PDFNumber,
  type PDFRawStream,
  type PDFRef,
  PDFString,
} from '@cantoo/pdf-lib'
import { beforeAll, describe, expect, it } from 'vitest'
import { findBrowser } from '../../src/print/browser/find-browser.ts'
import { unmarkDecoration } from '../../src/print/finish/decoration.ts'
import { finishPdf } from '../../src/print/finish/finish-pdf.ts'
import { type Element, readStructure } from '../../src/print/finish/structure/tree.ts'
import { brokenRules } from '../../src/print/inspect/pdf-rules.ts'
import { scanContent } from '../../src/print/inspect/pdf-rules-scan.ts'

const about = {
  title: 'A small paper',
  author: 'Nobody',
  subject: 'Rules',
  keywords: ['one'],
  lang: 'en',
  date: '2026-01-02',
  creator: 'tests',
  seed: 'seed',
}

const box = '<rect width="40" height="40" fill="none" stroke="#000"/>'

const text = `<!doctype html><html lang="en"><head><meta charset="utf-8"><title>-</title>
<style>@page{size:letter;margin:1in;@bottom-center{content:"foot"}}.probe a{position:absolute;width:1px;height:1px}section{border-bottom:1px solid #000}.second{break-before:page}</style></head><body>
<nav class="probe" aria-hidden="true"><a href="#table"></a><a href="#only-probed"></a></nav>
<section><h1>One</h1><p>See <a href="#table">the table</a>, <em>soon</em>.</p><div>loose words <strong>here</strong></div><dl><dt>Term</dt><dd>Meaning</dd></dl>
<ul><li>outer <b>bold</b><ul><li>inner</li></ul></li><li><p>paragraph</p></li></ul><div><span></span></div></section>
<section class="second"><h2 id="table">Two</h2><table><caption>Speeds</caption><thead><tr><th scope="col">A</th><th scope="col">B</th></tr></thead><tbody><tr><th scope="row">a</th><td style="border:1px solid #000"></td></tr></tbody></table>
<p id="only-probed">Thus <span role="img" aria-label="d equals V over A"><math><mi>d</mi><mo>=</mo><mfrac><mi>V</mi><mi>A</mi></mfrac></math></span>.</p>
<figure role="group"><svg role="img" aria-label="A box" width="40" height="40">${box}</svg><figcaption>Box</figcaption></figure></section></body></html>`

let raw: Uint8Array
let finished: Uint8Array

const open = (bytes: Uint8Array): Promise<PDFDocument> =>
  PDFDocument.load(bytes, { updateMetadata: false })

beforeAll(async () => {
  const found = await findBrowser(process.env)
  if (found.kind !== 'found') throw new Error(found.message)
  try {
    const page = await found.browser.newPage()
    await page.setContent(text)
    raw = await page.pdf({
      tagged: true,
      outline: true,
      preferCSSPageSize: true,
      printBackground: true,
    })
  } finally {
    await found.browser.close()
  }
  const printed = await open(raw)
  const field = printed.getForm().createTextField('name')
  field.addToPage(printed.getPage(1), { x: 100, y: 100, width: 80, height: 20, borderWidth: 0 })
  for (const dict of [field.acroField.dict, ...field.acroField.getWidgets().map((w) => w.dict)])
    dict.set(PDFName.of('TU'), PDFString.of('Your name'))
  finished = await finishPdf(printed, about)
})

const all = (document: PDFDocument): readonly Element[] => readStructure(document)?.all ?? []

function first(document: PDFDocument, type: string): Element {
  const found = all(document).find((e) => e.type === type)
  if (!found) throw new Error(`there is no ${type}`)
  return found
}

const retype =
  (type: string, to: string) =>
  (document: PDFDocument): void =>
    first(document, type).dict.set(PDFName.of('S'), PDFName.of(to))

const without =
  (type: string, key: string) =>
  (document: PDFDocument): void =>
    void first(document, type).dict.delete(PDFName.of(key))

function annotation(document: PDFDocument, subtype: string): PDFDict {
  for (const page of document.getPages()) {
    for (const ref of page.node.Annots()?.asArray() ?? []) {
      const dict = document.context.lookup(ref, PDFDict)
      if (dict.get(PDFName.of('Subtype')) === PDFName.of(subtype)) return dict
    }
  }
  throw new Error(`there is no ${subtype}`)
}

function rewrite(document: PDFDocument, change: (content: string) => string): void {
  const ref = document.getPage(0).node.get(PDFName.of('Contents')) as PDFRef
  const stream = document.context.lookup(ref) as PDFRawStream
  const content = change(Buffer.from(decodePDFRawStream(stream).decode()).toString('latin1'))
  document.context.assign(
    ref,
    document.context.stream(new Uint8Array(Buffer.from(content, 'latin1'))),
  )
}

function parentTree(document: PDFDocument): PDFArray {
  return document.catalog
    .lookup(PDFName.of('StructTreeRoot'), PDFDict)
    .lookup(PDFName.of('ParentTree'), PDFDict)
    .lookup(PDFName.of('Nums'), PDFArray)
}

const font = (document: PDFDocument): PDFDict => {
  const fonts = document.getPage(0).node.Resources()?.lookup(PDFName.of('Font'), PDFDict)
  return document.context.lookup(fonts?.values()[0], PDFDict)
}

/** Number of the content of the first heading. */
function headingMark(document: PDFDocument): number {
  const [kid] = first(document, 'H1').kids
  return kid?.kind === 'content' ? kid.mcid : -1
}

type Fault = readonly [rule: string, plant: (document: PDFDocument) => void, named: RegExp]

const faults: readonly Fault[] = [
  [
    'the document is marked',
    (d) => d.catalog.set(PDFName.of('MarkInfo'), d.context.obj({ Marked: false })),
    /Marked is not true/,
  ],
  [
    'it has a structure',
    (d) => void d.catalog.delete(PDFName.of('StructTreeRoot')),
    /no structure tree/,
  ],
  ['it has a language', (d) => void d.catalog.delete(PDFName.of('Lang')), /no language/],
  ['it has a title', (d) => d.setTitle(''), /no title in the document information/],
  ['it has metadata', (d) => void d.catalog.delete(PDFName.of('Metadata')), /no XMP metadata/],
  [
    'its metadata has a title',
    (d) =>
      d.catalog.set(
        PDFName.of('Metadata'),
        d.context.register(
          d.context.stream(
            '<dc:title><rdf:Alt><rdf:li xml:lang="x-default"></rdf:li></rdf:Alt></dc:title>',
          ),
        ),
      ),
    /no title in the XMP/,
  ],
  [
    'its title is displayed',
    (d) => void d.catalog.delete(PDFName.of('ViewerPreferences')),
    /DisplayDocTitle/,
  ],
  [
    'all that is painted is marked',
    (d) => rewrite(d, (c) => `${c}\n0 0 5 5 re\nf`),
    /page 1: 1 times f paints outside/,
  ],
  [
    'that also holds in one line',
    (d) => rewrite(d, (c) => `${c} BT (EMC /P <</MCID 0>> BDC) Tj ET`),
    /page 1: 1 times Tj paints outside/,
  ],
  [
    'content and artifacts lie apart',
    (d) => rewrite(d, (c) => c.replace(/MCID \d+ >>BDC\n/, '$&/Artifact BMC\nEMC\n')),
    /page 1: artifact and content inside one another: \d/,
  ],
  [
    'marked content is closed',
    (d) => rewrite(d, (c) => `${c}\n/Artifact BMC`),
    /page 1: marked content is not closed/,
  ],
  [
    'a number marks content once',
    (d) => rewrite(d, (c) => `${c}\n/P <</MCID 0>> BDC EMC /P <</MCID 0>> BDC EMC`),
    /page 1: a number of marked content is used twice/,
  ],
  ['content belongs to an element', without('H1', 'K'), /page 1: content in no element: \d/],
  [
    'content belongs to one element',
    (d) => first(d, 'P').dict.set(PDFName.of('K'), PDFNumber.of(headingMark(d))),
    /belongs to two elements/,
  ],
  [
    'content of an element is on the page',
    (d) => rewrite(d, (c) => c.replace(`<</MCID ${headingMark(d)} >>BDC`, '<</MCID 99 >>BDC')),
    /page 1: elements with content that is not on the page: \d/,
  ],
  [
    'content finds its element',
    (d) =>
      (d.context.lookup(parentTree(d).get(1)) as PDFArray).set(
        headingMark(d),
        first(d, 'Table').ref,
      ),
    /page 1: content whose parent in the parent tree is not its element: \d/,
  ],
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
  [
    'links have words',
    (d) => void annotation(d, 'Link').delete(PDFName.of('Contents')),
    /page 1: Link without Contents/,
  ],
  [
    'links are in the structure',
    (d) => first(d, 'Link').dict.set(PDFName.of('K'), PDFNumber.of(2)),
    /page 1: Link.* is not in the structure/,
  ],
  [
    'links find their element',
    (d) => annotation(d, 'Link').set(PDFName.of('StructParent'), PDFNumber.of(0)),
    /page 1: Link.* whose parent in the parent tree/,
  ],
  [
    'links lead somewhere',
    (d) => annotation(d, 'Link').set(PDFName.of('Dest'), PDFName.of('gone')),
    /page 1: Link leads to "gone"/,
  ],
  [
    'bookmarks lead somewhere',
    (d) =>
      d.catalog
        .lookup(PDFName.of('Outlines'), PDFDict)
        .lookup(PDFName.of('First'), PDFDict)
        .set(PDFName.of('Dest'), PDFName.of('gone')),
    /bookmark "One" leads to "gone"/,
  ],
  [
    'fields have a tooltip',
    (d) =>
      [
        annotation(d, 'Widget'),
        annotation(d, 'Widget').lookupMaybe(PDFName.of('Parent'), PDFDict),
      ].forEach((w) => w?.delete(PDFName.of('TU'))),
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
    (d) => d.getPage(1).node.set(PDFName.of('Tabs'), PDFName.of('R')),
    /page 2: annotations, but Tabs is not S/,
  ],
  [
    'fonts say what their shapes mean',
    (d) => void font(d).delete(PDFName.of('ToUnicode')),
    /font \S+ without ToUnicode/,
  ],
  [
    'fonts are embedded',
    (d) =>
      font(d)
        .lookup(PDFName.of('DescendantFonts'), PDFArray)
        .lookup(0, PDFDict)
        .delete(PDFName.of('FontDescriptor')),
    /font \S+ is not embedded/,
  ],
]

describe('a finished document', () => {
  it('breaks no rule', async () => {
    expect(brokenRules(await open(finished))).toEqual([])
  })

  it('breaks several as the browser has printed it', async () => {
    const broken = brokenRules(await open(raw)).join('\n')
    for (const rule of [/paints outside/, /LI holds/, /Link without Contents/, /no XMP/])
      expect(broken).toMatch(rule)
  })

  it('has lists with bodies, formulas, paragraphs for loose words, and no boxes without meaning', async () => {
    const document = await open(finished)
    const count = (type: string): number => all(document).filter((e) => e.type === type).length
    expect({
      NonStruct: count('NonStruct'),
      LI: count('LI'),
      LBody: count('LBody'),
      Formula: count('Formula'),
      Figure: count('Figure'),
      Form: count('Form'),
      TD: count('TD'),
    }).toEqual({ NonStruct: 0, LI: 3, LBody: 3, Formula: 1, Figure: 1, Form: 1, TD: 1 })
    const tops = readStructure(document)?.tops[0]?.kids ?? []
    expect(tops.every((k) => k.kind === 'element')).toBe(true)
  })

  it('keeps all content of the page and its order', async () => {
    const order = (d: PDFDocument): number[] => {
      const numbers: number[] = []
      const walk = (e: Element): void =>
        e.kids.forEach((k) =>
          k.kind === 'element'
            ? walk(k)
            : k.kind === 'content' && k.page === d.getPage(0).ref && numbers.push(k.mcid),
        )
      readStructure(d)?.tops.forEach(walk)
      return numbers
    }
    const [before, after] = [order(await open(raw)), order(await open(finished))]
    expect(after.length).toBeGreaterThan(8)
    expect(before.filter((n) => after.includes(n))).toEqual(after)
  })

  it('has lost the links that only noted places, and none of the places', async () => {
    const document = await open(finished)
    const links = document
      .getPages()
      .flatMap((p) =>
        (p.node.Annots()?.asArray() ?? []).filter(
          (a) =>
            document.context.lookup(a, PDFDict).get(PDFName.of('Subtype')) === PDFName.of('Link'),
        ),
      )
    expect(links.length).toBe(1)
    expect(
      document.catalog
        .lookup(PDFName.of('Dests'), PDFDict)
        .keys()
        .map((k) => k.decodeText())
        .sort(),
    ).toEqual(['only-probed', 'table'])
  })
})

describe('a planted fault is named:', () => {
  it.each(faults)('%s', async (_, plant, named) => {
    const document = await open(finished)
    plant(document)
    expect(brokenRules(document).join('\n')).toMatch(named)
  })
})

describe('scanContent', () => {
  it('is not misled by operators in strings, comments and images', () => {
    const scan = scanContent(
      '/P <</MCID 3>> BDC BT (a \\) (EMC) f) Tj ET EMC % f\n/Artifact BMC BI /W 1 /H 1 ID f S EMC EI EMC',
    )
    expect(scan).toEqual({ mcids: [3], unmarked: new Map(), mixed: [], balanced: true })
  })

  it('finds numbers in property lists of the resources', () => {
    expect(
      scanContent('/P /MC0 BDC\nf\nEMC', (name) => (name === 'MC0' ? 7 : undefined)).mcids,
    ).toEqual([7])
  })
})

describe('unmarkDecoration', () => {
  const content =
    '/Div <</MCID 0 >>BDC\n0 0 1 1 re\nf\nEMC\n/P <</MCID 1 >>BDC\nBT\n<00> Tj\nET\nEMC'

  it('makes tagged rules artifacts and leaves words', () => {
    expect(unmarkDecoration(content, () => false)).toEqual({
      content: content.replace('/Div <</MCID 0 >>BDC', '/Artifact BMC'),
      removed: [0],
    })
  })

  it('leaves what it is told to keep', () => {
    expect(unmarkDecoration(content, () => true)).toEqual({ content, removed: [] })
  })
})

import {
  decodePDFRawStream,
  PDFArray,
  PDFBool,
  PDFDict,
  type PDFDocument,
  PDFHexString,
  PDFName,
  type PDFObject,
  PDFRawStream,
  PDFStream,
  PDFString,
} from '@cantoo/pdf-lib'

const name = (text: string): PDFName => PDFName.of(text)

const isTrue = (value: PDFObject | undefined): boolean =>
  value instanceof PDFBool && value.asBoolean()

function textOf(stream: PDFObject | undefined): string | undefined {
  if (stream instanceof PDFRawStream)
    return Buffer.from(decodePDFRawStream(stream).decode()).toString('utf8')
  return stream instanceof PDFStream
    ? Buffer.from(stream.getContents()).toString('utf8')
    : undefined
}

/** The document says what it is and in which language (ISO 14289-1, 7.1 and 7.2). */
export function documentFaults(document: PDFDocument): string[] {
  const { catalog } = document
  const faults: string[] = []
  if (!isTrue(catalog.lookupMaybe(name('MarkInfo'), PDFDict)?.lookup(name('Marked'))))
    faults.push('document: Marked is not true')
  const lang = catalog.lookup(name('Lang'))
  if (
    !(
      (lang instanceof PDFString || lang instanceof PDFHexString) &&
      /^[A-Za-z]{2,3}(?:-[A-Za-z0-9]+)*$/.test(lang.decodeText())
    )
  )
    faults.push('document: no language')
  if ((document.getTitle() ?? '').trim() === '')
    faults.push('document: no title in the document information')
  if (
    !isTrue(
      catalog.lookupMaybe(name('ViewerPreferences'), PDFDict)?.lookup(name('DisplayDocTitle')),
    )
  )
    faults.push('document: DisplayDocTitle is not true')
  const xmp = textOf(document.catalog.lookup(name('Metadata')))
  if (xmp === undefined) faults.push('document: no XMP metadata')
  else if (!/<dc:title>[\s\S]*?<rdf:li[^>]*>\s*[^<\s][\s\S]*?<\/dc:title>/.test(xmp))
    faults.push('document: no title in the XMP metadata')
  return faults
}

/**
 * A string of at least one character that is shown. An empty field names a font, but shows nothing
 * in it.
 */
const showsText = /(?:<[\da-fA-F\s]+>|\([^)]+\)|\])\s*(?:Tj|TJ|'|")/

const programs = ['FontFile', 'FontFile2', 'FontFile3']

/** Fonts carry their shapes, and say which characters these stand for (ISO 14289-1, 7.21). */
export function fontFaults(document: PDFDocument): string[] {
  const { context } = document
  const seen = new Set<PDFObject>()
  const faults: string[] = []

  const checkFont = (font: PDFDict, where: string): void => {
    const base = font.lookup(name('BaseFont'))
    const called = base instanceof PDFName ? base.decodeText() : 'without name'
    const subtype = font.lookup(name('Subtype'))
    if (!font.has(name('ToUnicode'))) faults.push(`${where}: font ${called} without ToUnicode`)
    // The shapes of a Type 3 font are content streams of its own.
    if (subtype === name('Type3')) return
    const below = font.lookupMaybe(name('DescendantFonts'), PDFArray)?.lookup(0, PDFDict) ?? font
    const descriptor = below.lookupMaybe(name('FontDescriptor'), PDFDict)
    if (!descriptor || !programs.some((p) => descriptor.has(name(p))))
      faults.push(`${where}: font ${called} is not embedded`)
  }
  const checkResources = (resources: PDFDict | undefined, where: string): void => {
    if (!resources || seen.has(resources)) return
    seen.add(resources)
    for (const [, ref] of resources.lookupMaybe(name('Font'), PDFDict)?.entries() ?? []) {
      const font = context.lookup(ref)
      if (!(font instanceof PDFDict) || seen.has(font)) continue
      seen.add(font)
      checkFont(font, where)
    }
    for (const [, ref] of resources.lookupMaybe(name('XObject'), PDFDict)?.entries() ?? []) {
      const object = context.lookup(ref)
      if (object instanceof PDFStream)
        checkResources(object.dict.lookupMaybe(name('Resources'), PDFDict), where)
    }
  }
  document.getPages().forEach((page, i) => {
    checkResources(page.node.Resources(), `page ${i + 1}`)
    for (const ref of page.node.Annots()?.asArray() ?? []) {
      const shown = context.lookup(ref, PDFDict).lookupMaybe(name('AP'), PDFDict)?.lookup(name('N'))
      const states =
        shown instanceof PDFStream
          ? [shown]
          : shown instanceof PDFDict
            ? shown.values().map((v) => context.lookup(v))
            : []
      for (const state of states)
        if (state instanceof PDFStream && showsText.test(textOf(state) ?? ''))
          checkResources(state.dict.lookupMaybe(name('Resources'), PDFDict), `page ${i + 1}, field`)
    }
  })
  return faults
}

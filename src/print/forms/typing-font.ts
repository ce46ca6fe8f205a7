import { deflateSync } from 'node:zlib'
import { addObject } from '../pdf/documents.ts'
import type { PdfDocument, PdfReference } from '../pdf/kinds.ts'
import { array, dictionary } from '../pdf/make-objects.ts'
import { rawStream } from '../pdf/streams.ts'
import { firstCode, lastCode, metricsOf } from './font-metrics.ts'
import { tablesOfWoff, trueTypeOf } from './woff.ts'

const name = 'SourceSans3-Regular'

/** Flags of a font without serifs whose characters are those of Latin (ISO 32000-1, table 123). */
const nonsymbolic = 32

/** How thick stems are, thousandths: no viewer needs it of an embedded font, but it must be said. */
const stem = 80

/**
 * Embeds a font for what somebody types into a field: whole, since nobody knows yet which letters
 * that will be, and in the encoding in which viewers write (ISO 32000-1, 9.6.3 and annex D).
 */
export function addTypingFont(document: PdfDocument, woff: Uint8Array): PdfReference {
  const tables = tablesOfWoff(woff)
  const { widths, ascent, descent, capHeight, box } = metricsOf(tables)
  const file = trueTypeOf(tables)
  const packed = deflateSync(file)
  const program = rawStream(document, packed, {
    Length: packed.length,
    Length1: file.length,
    Filter: 'FlateDecode',
  })
  const descriptor = dictionary(document, {
    Type: 'FontDescriptor',
    FontName: name,
    Flags: nonsymbolic,
    FontBBox: array(document, [...box]),
    ItalicAngle: 0,
    Ascent: ascent,
    Descent: descent,
    CapHeight: capHeight,
    StemV: stem,
    FontFile2: addObject(document, program),
  })
  return addObject(
    document,
    dictionary(document, {
      Type: 'Font',
      Subtype: 'TrueType',
      BaseFont: name,
      Encoding: 'WinAnsiEncoding',
      FirstChar: firstCode,
      LastChar: lastCode,
      Widths: array(document, [...widths]),
      FontDescriptor: addObject(document, descriptor),
    }),
  )
}

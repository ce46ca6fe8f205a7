import { inflateSync } from 'node:zlib'
import {
  decodePDFRawStream,
  PDFContentStream,
  PDFName,
  type PDFObject,
  PDFRawStream,
} from '@cantoo/pdf-lib'

const [filter, flate, parameters] = ['Filter', 'FlateDecode', 'DecodeParms'].map((n) =>
  PDFName.of(n),
) as [PDFName, PDFName, PDFName]

/** Node's own decoder takes a fifth of the time of the library's, which knows all filters. */
function bytesOf(stream: PDFRawStream): Uint8Array {
  const plain = stream.dict.get(filter) === flate && !stream.dict.has(parameters)
  return plain ? inflateSync(stream.contents) : decodePDFRawStream(stream).decode()
}

/** What a content stream says, one character a byte; undefined for an object that is not one. */
export function streamText(object: PDFObject | undefined): string | undefined {
  if (object instanceof PDFRawStream) return Buffer.from(bytesOf(object)).toString('latin1')
  return object instanceof PDFContentStream
    ? Buffer.from(object.getUnencodedContents()).toString('latin1')
    : undefined
}

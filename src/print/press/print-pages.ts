import { PDFDocument } from '@cantoo/pdf-lib'
import { finishPdf, type PdfAbout } from '../finish/finish-pdf.ts'
import type { Copy, Press } from './press.ts'
import { toPdf } from './to-pdf.ts'

/** Prints and finishes a document that needs nothing else. */
export async function printPages(press: Press, copy: Copy, about: PdfAbout): Promise<Uint8Array> {
  const bytes = await press.run(copy, {}, (page) => toPdf(page, { tagged: true }))
  return press.keep([JSON.stringify(about), bytes], async () => finishPdf(await PDFDocument.load(bytes, { updateMetadata: false }), about))
}

import { PDFDocument } from '@cantoo/pdf-lib'
import { finishPdf, type PdfAbout } from '../finish/finish-pdf.ts'
import type { Copy, Press } from './press.ts'
import { toPdf } from './to-pdf.ts'

/** Prints and finishes a document that needs nothing else. */
export const printPages = (press: Press, copy: Copy, about: PdfAbout): Promise<Uint8Array> =>
  press.run(copy, about, async (page, own) => finishPdf(await PDFDocument.load(await toPdf(page, { tagged: true }), { updateMetadata: false }), own))

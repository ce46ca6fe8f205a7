import { PDFDocument } from '@cantoo/pdf-lib'
import { finishPdf, type PdfAbout } from '../finish/finish-pdf.ts'
import type { Copy, Press } from './press.ts'
import { toPdf } from './to-pdf.ts'

/** Finishes what was printed, unless the same has been finished before. */
export const finishPrinted = (
  press: Press,
  bytes: Uint8Array,
  about: PdfAbout,
): Promise<Uint8Array> =>
  press.keep([JSON.stringify(about), bytes], async () =>
    finishPdf(await PDFDocument.load(bytes, { updateMetadata: false }), about),
  )

/** Prints and finishes a document that needs nothing else. */
export const printPages = async (press: Press, copy: Copy, about: PdfAbout): Promise<Uint8Array> =>
  finishPrinted(press, await press.run(copy, {}, (page) => toPdf(page, { tagged: true })), about)

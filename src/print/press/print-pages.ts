import { finishPdf, type PdfAbout } from '../finish/finish-pdf.ts'
import { toPdf } from '../page/to-pdf.ts'
import { openDocument } from '../pdf/documents.ts'
import type { Copy, Press } from './press.ts'

/** Prints a document that needs nothing else, and leaves it as the browser has printed it. */
export const printRaw = (press: Press, copy: Copy): Promise<Uint8Array> =>
  press.run(copy, {}, (page) => toPdf(page))

/** Finishes what was printed, unless the same has been finished before. */
export const finishPrinted = (
  press: Press,
  bytes: Uint8Array,
  about: PdfAbout,
): Promise<Uint8Array> =>
  press.keep([JSON.stringify(about), bytes], async () => finishPdf(openDocument(bytes), about))

/** Prints and finishes a document that needs nothing else. */
export const printPages = async (press: Press, copy: Copy, about: PdfAbout): Promise<Uint8Array> =>
  finishPrinted(press, await printRaw(press, copy), about)

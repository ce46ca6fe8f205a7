import { type BookletRoom, fieldBookRoom, handoutRoom } from '../../model/booklet.ts'
import { finishPdf, type PdfAbout } from '../finish/finish-pdf.ts'
import { lay } from '../lay/lay.ts'
import { toPdf } from '../page/to-pdf.ts'
import { openDocument } from '../pdf/documents.ts'
import { pageCount } from '../pdf/pages.ts'
import type { Copy, Press } from '../press/press.ts'
import { finishPrinted } from '../press/print-pages.ts'
import { foldBooklet } from './fold-booklet.ts'

export type FieldBookPrint = {
  /** The book, one page after the other. */
  readonly book: Uint8Array
  /** The same to be printed on both sides of leaves twice as large, and folded. */
  readonly booklet: Uint8Array
  readonly pages: number
}

/** Lays a booklet out and prints it as it has come out. */
const printLaidOut = (press: Press, copy: Copy, room: BookletRoom) =>
  press.run(copy, room, async (page, limit) => {
    const pages = await lay(page, 'fieldBook', limit)
    return { bytes: await toPdf(page), pages }
  })

/**
 * Prints the pages that volunteers are handed.
 * @throws Error when they are too many.
 */
export async function printHandout(press: Press, copy: Copy, about: PdfAbout): Promise<Uint8Array> {
  const { bytes } = await printLaidOut(press, copy, handoutRoom)
  return finishPrinted(press, bytes, about)
}

/**
 * Prints the field book.
 * @throws Error when a page holds too much, or the book has too many.
 */
export async function printFieldBook(
  press: Press,
  copy: Copy,
  { book, booklet }: { readonly book: PdfAbout; readonly booklet: PdfAbout },
): Promise<FieldBookPrint> {
  const raw = await printLaidOut(press, copy, fieldBookRoom)
  return press.keep([JSON.stringify([book, booklet]), raw.bytes], async () => {
    const printed = openDocument(raw.bytes)
    const pages = pageCount(printed)
    if (pages !== raw.pages) throw new Error(`${pages} pages instead of ${raw.pages}`)
    const finished = finishPdf(printed, book)
    return {
      book: finished,
      booklet: foldBooklet(openDocument(finished), booklet),
      pages,
    }
  })
}

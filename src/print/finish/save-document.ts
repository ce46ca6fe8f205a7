import { PDFCrossRefStream, type PDFDocument, type PDFRef } from '@cantoo/pdf-lib'

type Entries = {
  readonly entries: { readonly ref: PDFRef }[]
  appendEntry(entry: { readonly ref: PDFRef }): void
}

const stream = PDFCrossRefStream.prototype as unknown as Entries
const searchAndInsert = stream.appendEntry

/**
 * The library looks through all entries of the cross-reference table for the place of each, which
 * takes seconds for the tens of thousands of tags of a binder. They nearly always come in order, so
 * that the place is the end.
 */
stream.appendEntry = function (this: Entries, entry) {
  const last = this.entries.at(-1)
  if (!last || last.ref.objectNumber < entry.ref.objectNumber) this.entries.push(entry)
  else searchAndInsert.call(this, entry)
}

/** The bytes of a document, its objects in compressed streams. */
export const saveDocument = (document: PDFDocument): Promise<Uint8Array> =>
  // Waiting in between, as for a page that must stay alive, would take longer than the work.
  document.save({ useObjectStreams: true, updateFieldAppearances: false, objectsPerTick: Infinity })

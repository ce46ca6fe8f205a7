import type { LabelRange } from '../binder/page-numbers.ts'
import type { PartPlace } from '../join/part-place.ts'
import { type WrittenPart, writePart } from '../join/write-part.ts'
import type { PdfDocument } from '../pdf/kinds.ts'
import { saveDocument } from '../pdf/save-document.ts'
import { describeLinks } from './links.ts'
import { fixIdentity, writeMetadata } from './metadata.ts'
import { closeOutline } from './outline.ts'
import { labelPages } from './page-labels.ts'
import { dropProbes } from './probes.ts'
import { refuseShrunk } from './refuse-shrunk.ts'
import { orderStructure } from './structure/order-structure.ts'
import { renumberStructure } from './structure/renumber.ts'
import { lowerDestinations } from './targets.ts'

/** What a document says about itself. */
export type PdfAbout = {
  readonly title: string
  readonly author: string
  readonly subject: string
  readonly keywords: readonly string[]
  readonly lang: string
  /** `YYYY-MM-DD`; never the clock, so that the same input gives the same bytes. */
  readonly date: string
  readonly creator: string
  /** What the file identifier is made from: what went into the document. */
  readonly seed: string
  /** How its pages are numbered; from 1 on when it is left out. */
  readonly labels?: readonly LabelRange[]
  /** Top margin in points, for documents with links inside. */
  readonly marginTop?: number
}

/**
 * The part of finishing that is done page by page: what nobody sees or reads is taken out of what a
 * browser has printed, and its tags are set in order.
 * @throws Error when the browser has printed it smaller than it is.
 */
export function orderContent(document: PdfDocument): void {
  refuseShrunk(document)
  dropProbes(document)
  orderStructure(document)
}

/** Links, their targets and bookmarks. @param marginTop Points, for documents with links inside. */
function finishContent(document: PdfDocument, marginTop: number | undefined): void {
  describeLinks(document)
  if (marginTop !== undefined) lowerDestinations(document, marginTop)
  closeOutline(document)
}

/**
 * Finishes a document whose content is in order as one of several that are to be joined: all but
 * what belongs to the whole. The document is used up.
 * @param marginTop Points, for documents with links inside.
 */
export function finishPart(
  document: PdfDocument,
  place: PartPlace,
  marginTop?: number,
): WrittenPart {
  finishContent(document, marginTop)
  return writePart(document, place)
}

/**
 * Finishes a document whose content is in order, in one pass: metadata, page labels, links,
 * bookmarks, fixed identity.
 */
function finishOrdered(document: PdfDocument, about: PdfAbout): Uint8Array {
  writeMetadata(document, about)
  labelPages(document, about.labels)
  renumberStructure(document)
  finishContent(document, about.marginTop)
  fixIdentity(document, about.seed)
  return saveDocument(document)
}

/** Finishes what a browser has printed. */
export function finishPdf(document: PdfDocument, about: PdfAbout): Uint8Array {
  orderContent(document)
  return finishOrdered(document, about)
}

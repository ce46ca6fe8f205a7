import type { LabelRange } from '../binder/page-numbers.ts'
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

const plain: readonly LabelRange[] = [{ start: 0, style: 'decimal', prefix: '', first: 1 }]

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

/**
 * Finishes a document whose content is in order, in one pass: metadata, page labels, links,
 * bookmarks, fixed identity.
 */
export async function finishOrdered(document: PdfDocument, about: PdfAbout): Promise<Uint8Array> {
  writeMetadata(document, about)
  labelPages(document, about.labels ?? plain)
  renumberStructure(document)
  describeLinks(document)
  if (about.marginTop !== undefined) lowerDestinations(document, about.marginTop)
  closeOutline(document)
  fixIdentity(document, about.seed)
  return saveDocument(document)
}

/** Finishes what a browser has printed. */
export function finishPdf(document: PdfDocument, about: PdfAbout): Promise<Uint8Array> {
  orderContent(document)
  return finishOrdered(document, about)
}

import { ParseSpeeds, PDFDocument } from '@cantoo/pdf-lib'
import type { PdfDictionary, PdfDocument, PdfObject, PdfReference } from './kinds.ts'
import { contextOf, ours, theirs } from './library.ts'

/**
 * Opens a document as it is: nothing of it is brought up to date. It is read in one go: a pause after
 * every hundred objects would cost more than they do.
 */
export const openDocument = async (bytes: Uint8Array): Promise<PdfDocument> =>
  ours(await PDFDocument.load(bytes, { updateMetadata: false, parseSpeed: ParseSpeeds.Fastest }))

/** A document without pages. */
export const emptyDocument = async (): Promise<PdfDocument> =>
  ours(await PDFDocument.create({ updateMetadata: false }))

export const catalogOf = (document: PdfDocument): PdfDictionary => ours(theirs(document).catalog)

/** The object itself, or the one that it refers to. */
export const resolve = (
  document: PdfDocument,
  object: PdfObject | undefined,
): PdfObject | undefined => ours(contextOf(document).lookup(theirs(object)))

/** Gives an object a number of its own. */
export const addObject = (document: PdfDocument, object: PdfObject): PdfReference =>
  ours(contextOf(document).register(theirs(object)))

/** A number for an object that comes later. */
export const reserveNumber = (document: PdfDocument): PdfReference =>
  ours(contextOf(document).nextRef())

/** Puts an object in the place of the one that a reference led to. */
export const setObject = (
  document: PdfDocument,
  reference: PdfReference,
  object: PdfObject,
): void => contextOf(document).assign(theirs(reference), theirs(object))

export const removeObject = (document: PdfDocument, reference: PdfReference): void =>
  void contextOf(document).delete(theirs(reference))

/** All objects that stand by themselves, in the order of their numbers. */
export const objectsOf = (
  document: PdfDocument,
): readonly (readonly [reference: PdfReference, object: PdfObject])[] =>
  contextOf(document)
    .enumerateIndirectObjects()
    .map(([reference, object]) => [ours(reference), ours(object)] as const)

import type { PdfDocument, PdfReference } from './kinds.ts'
import { contextOf, ours, theirs } from './library.ts'
import { array, hexadecimal } from './make-objects.ts'
import { asReference } from './objects.ts'

/** What a document says about itself to viewers (ISO 32000-1, 14.3.3). */
export type Information = {
  readonly title: string
  readonly author: string
  readonly subject: string
  readonly keywords: readonly string[]
  /** Program that made it. */
  readonly creator: string
  readonly date: Date
  /** Language tag, such as `en`. */
  readonly lang: string
}

/** Writes the document information; the title is shown in the title bar of a viewer. */
export function writeInformation(document: PdfDocument, about: Information): void {
  const library = theirs(document)
  library.setTitle(about.title, { showInWindowTitleBar: true })
  library.setAuthor(about.author)
  library.setSubject(about.subject)
  library.setKeywords([...about.keywords])
  library.setCreator(about.creator)
  library.setProducer(about.creator)
  library.setCreationDate(about.date)
  library.setModificationDate(about.date)
  library.setLanguage(about.lang)
}

/** Where the document information stands. */
export const informationReference = (document: PdfDocument): PdfReference | undefined =>
  asReference(ours(contextOf(document).trailerInfo.Info))

/** @param digits Hexadecimal digits of the file identifier (ISO 32000-1, 14.4). */
export function setFileIdentifier(document: PdfDocument, digits: string): void {
  const id = hexadecimal(digits)
  contextOf(document).trailerInfo.ID = theirs(array(document, [id, id]))
}

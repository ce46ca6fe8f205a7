import { entry, setEntry } from './dictionaries.ts'
import { addObject, catalogOf, resolve } from './documents.ts'
import type { PdfDictionary, PdfDocument, PdfReference } from './kinds.ts'
import { array, dictionary, hexadecimal, plainText, unicodeText } from './make-objects.ts'
import { asDictionary } from './objects.ts'
import { inside, outside, type Value } from './values.ts'

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

/** Where the document information stands. */
export const informationReference = (document: PdfDocument): PdfReference | undefined =>
  outside(inside(document).info)

/** The document information, begun where there is none. */
function informationOf(document: PdfDocument): PdfDictionary {
  const known = asDictionary(resolve(document, informationReference(document)))
  if (known) return known
  const made = dictionary(document, {})
  inside(document).info = inside(addObject(document, made))
  return made
}

/** A moment as it is written (7.9.4). */
const moment = (date: Date): string => `D:${date.toISOString().slice(0, 19).replace(/[-T:]/g, '')}Z`

/** Writes the document information; the title is shown in the title bar of a viewer. */
export function writeInformation(document: PdfDocument, about: Information): void {
  const information = informationOf(document)
  const says = (key: string, text: string): void => setEntry(information, key, unicodeText(text))
  says('Title', about.title)
  const catalog = catalogOf(document)
  const preferences =
    asDictionary(resolve(document, entry(catalog, 'ViewerPreferences'))) ?? dictionary(document, {})
  setEntry(preferences, 'DisplayDocTitle', outside(true as Value))
  if (!entry(catalog, 'ViewerPreferences'))
    setEntry(catalog, 'ViewerPreferences', addObject(document, preferences))
  says('Author', about.author)
  says('Subject', about.subject)
  says('Keywords', about.keywords.join(' '))
  says('Creator', about.creator)
  says('Producer', about.creator)
  setEntry(information, 'CreationDate', plainText(moment(about.date)))
  setEntry(information, 'ModDate', plainText(moment(about.date)))
  setEntry(catalog, 'Lang', plainText(about.lang))
}

/** @param digits Hexadecimal digits of the file identifier (ISO 32000-1, 14.4). */
export function setFileIdentifier(document: PdfDocument, digits: string): void {
  const id = hexadecimal(digits)
  inside(document).id = inside(array(document, [id, id]))
}

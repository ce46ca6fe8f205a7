import { dictionaryAt, lookUp, textAt } from '../../../src/print/pdf/dictionaries.ts'
import { catalogOf, resolve } from '../../../src/print/pdf/documents.ts'
import { informationReference } from '../../../src/print/pdf/information.ts'
import type { PdfDictionary, PdfDocument } from '../../../src/print/pdf/kinds.ts'
import { dictionary } from '../../../src/print/pdf/make-objects.ts'
import { asDictionary } from '../../../src/print/pdf/objects.ts'
import { streamBytes } from '../../../src/print/pdf/streams.ts'

const languageTag = /^[A-Za-z]{2,3}(?:-[A-Za-z0-9]+)*$/

const titleInXmp = /<dc:title>[\s\S]*?<rdf:li[^>]*>\s*[^<\s][\s\S]*?<\/dc:title>/

/** All that is true in a document is the same object. */
const isTrue = (document: PdfDocument, holder: PdfDictionary | undefined, key: string): boolean =>
  lookUp(holder, key) === lookUp(dictionary(document, { is: true }), 'is')

/** The document says what it is and in which language (ISO 14289-1, 7.1 and 7.2). */
export function documentFaults(document: PdfDocument): string[] {
  const catalog = catalogOf(document)
  const faults: string[] = []
  if (!isTrue(document, dictionaryAt(catalog, 'MarkInfo'), 'Marked'))
    faults.push('document: Marked is not true')
  if (!languageTag.test(textAt(catalog, 'Lang') ?? '')) faults.push('document: no language')
  const information = asDictionary(resolve(document, informationReference(document)))
  if ((textAt(information, 'Title') ?? '').trim() === '')
    faults.push('document: no title in the document information')
  if (!isTrue(document, dictionaryAt(catalog, 'ViewerPreferences'), 'DisplayDocTitle'))
    faults.push('document: DisplayDocTitle is not true')
  const xmp = streamBytes(lookUp(catalog, 'Metadata'))
  if (xmp === undefined) faults.push('document: no XMP metadata')
  else if (!titleInXmp.test(Buffer.from(xmp).toString('utf8')))
    faults.push('document: no title in the XMP metadata')
  return faults
}

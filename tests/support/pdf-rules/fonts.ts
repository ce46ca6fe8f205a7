import {
  arrayAt,
  dictionaryAt,
  entriesOf,
  hasEntry,
  lookUp,
  nameAt,
} from '../../../src/print/pdf/dictionaries.ts'
import { resolve } from '../../../src/print/pdf/documents.ts'
import type { PdfDictionary, PdfDocument, PdfObject } from '../../../src/print/pdf/kinds.ts'
import { asDictionary, itemsOf } from '../../../src/print/pdf/objects.ts'
import { annotationsOf, pagesOf, resourcesOf } from '../../../src/print/pdf/pages.ts'
import { streamDictionary, streamText } from '../../../src/print/pdf/streams.ts'

/** A font with the place where it is first used. */
type UsedFont = { readonly font: PdfDictionary; readonly where: string }

/**
 * A string of at least one character that is shown. An empty field names a font, but shows nothing
 * in it.
 */
const showsText = /(?:<[\da-fA-F\s]+>|\([^)]+\)|\])\s*(?:Tj|TJ|'|")/

/** Fonts that resources name, and those of forms drawn with them. */
function fontsIn(
  document: PdfDocument,
  resources: PdfDictionary | undefined,
  where: string,
  seen: Set<PdfObject>,
): UsedFont[] {
  if (!resources || seen.has(resources)) return []
  seen.add(resources)
  const own = entriesOf(dictionaryAt(resources, 'Font')).flatMap(([, item]) => {
    const font = asDictionary(resolve(document, item))
    if (!font || seen.has(font)) return []
    seen.add(font)
    return [{ font, where }]
  })
  const drawn = entriesOf(dictionaryAt(resources, 'XObject')).flatMap(([, item]) => {
    const about = streamDictionary(resolve(document, item))
    return fontsIn(document, dictionaryAt(about, 'Resources'), where, seen)
  })
  return [...own, ...drawn]
}

/** What a field shows in each of its states. */
function appearances(document: PdfDocument, widget: PdfDictionary): readonly PdfObject[] {
  const shown = dictionaryAt(widget, 'AP')
  const only = lookUp(shown, 'N')
  if (only && streamDictionary(only)) return [only]
  return entriesOf(dictionaryAt(shown, 'N')).flatMap(([, s]) => resolve(document, s) ?? [])
}

/** Every font in which a document shows something, once. */
export function fontsOf(document: PdfDocument): readonly UsedFont[] {
  const seen = new Set<PdfObject>()
  return pagesOf(document).flatMap((page, i) => {
    const fields = annotationsOf(document, page)
      .flatMap(({ dictionary }) => appearances(document, dictionary))
      .filter((state) => showsText.test(streamText(state) ?? ''))
    return [
      ...fontsIn(document, resourcesOf(page), `page ${i + 1}`, seen),
      ...fields.flatMap((state) => {
        const resources = dictionaryAt(streamDictionary(state), 'Resources')
        return fontsIn(document, resources, `page ${i + 1}, field`, seen)
      }),
    ]
  })
}

const programs = ['FontFile', 'FontFile2', 'FontFile3']

/** Fonts carry their shapes, and say which characters these stand for (ISO 14289-1, 7.21). */
export function fontFaults(document: PdfDocument): string[] {
  return fontsOf(document).flatMap(({ font, where }) => {
    const called = nameAt(font, 'BaseFont') ?? 'without name'
    const unmapped = hasEntry(font, 'ToUnicode')
      ? []
      : [`${where}: font ${called} without ToUnicode`]
    // The shapes of a Type 3 font are content streams of its own.
    if (nameAt(font, 'Subtype') === 'Type3') return unmapped
    const [below] = itemsOf(arrayAt(font, 'DescendantFonts'))
    const descriptor = dictionaryAt(
      asDictionary(resolve(document, below)) ?? font,
      'FontDescriptor',
    )
    const isEmbedded = programs.some((p) => lookUp(descriptor, p) !== undefined)
    return isEmbedded ? unmapped : [...unmapped, `${where}: font ${called} is not embedded`]
  })
}

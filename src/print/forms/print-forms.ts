import { finishPdf, type PdfAbout } from '../finish/finish-pdf.ts'
import type { BrowserPage } from '../page/open-page.ts'
import { toPdf } from '../page/to-pdf.ts'
import { openDocument } from '../pdf/documents.ts'
import { addFields, type Field } from '../pdf/fields.ts'
import type { PdfDocument } from '../pdf/kinds.ts'
import { pageCount, pageHeight } from '../pdf/pages.ts'
import type { Copy, Press } from '../press/press.ts'
import { formsIn, type PlaceToWrite, placesToWrite } from './places-to-write.ts'
import { addTypingFont } from './typing-font.ts'

/** CSS pixels are 1/96 in, points 1/72 in. */
const points = (px: number): number => (px * 72) / 96

/** A little air, so that the field's frame does not cover the printed line, points. */
const inset = 1.5

/**
 * From this height on there is room for two lines, and long text is broken instead of made tiny,
 * points.
 */
const twoLines = 18

function fieldAt(printed: PdfDocument, place: PlaceToWrite): Field {
  const height = points(place.height) - 2 * inset
  const text = place.lines > 1 || height >= twoLines ? 'lines' : 'line'
  return {
    kind: place.kind === 'check' ? 'check' : text,
    name: place.name,
    tooltip: place.tip,
    page: place.page,
    box: {
      x: points(place.x) + inset,
      y: pageHeight(printed, place.page) - points(place.y + place.height) + inset,
      width: points(place.width) - 2 * inset,
      height,
    },
  }
}

async function printPlaced(page: BrowserPage): Promise<{
  readonly bytes: Uint8Array
  readonly places: readonly PlaceToWrite[]
  readonly pages: number
}> {
  const places = await placesToWrite(page)
  return { places, bytes: await toPdf(page), pages: await formsIn(page) }
}

/**
 * Prints all forms and lays a field with name and tooltip over every place to write.
 * @param forms With the font in which they are filled in, as WOFF.
 * @throws Error when a form runs off its page.
 */
export async function printForms(
  press: Press,
  forms: Copy & { readonly typing: Uint8Array },
  about: PdfAbout,
): Promise<Uint8Array> {
  const { bytes, places, pages } = await press.run(
    { css: forms.css, body: forms.body },
    {},
    printPlaced,
  )
  return press.keep([JSON.stringify([about, places]), bytes], async () => {
    const printed = openDocument(bytes)
    if (pageCount(printed) !== pages)
      throw new Error(`${pageCount(printed)} pages instead of ${pages} of forms`)
    const fields = places.map((place) => fieldAt(printed, place))
    addFields(printed, fields, addTypingFont(printed, forms.typing))
    return finishPdf(printed, about)
  })
}

import { noRoom } from '../page/no-room.ts'
import type { PdfDocument } from '../pdf/kinds.ts'
import { contentOf, pagesOf } from '../pdf/pages.ts'

/** What Chromium writes for a CSS pixel in a page that it prints at full size: 300/96. */
const fullSize = 3.125

/** The area of the text, and the scale at its corner: `x y w h re W* n q s 0 0 s x y cm`; or at the page's. */
const areaScale = /(\S+) (\S+) \S+ \S+ re\s+W\*? n\s+q\s+([\d.]+) 0 0 [\d.]+ (?:\1 \2|0 0) cm/

/**
 * Makes sure that a document was printed at its own size: where anything is wider than its page the
 * browser prints all pages smaller, without a word.
 * @throws Error with the size that it was printed at.
 */
export function refuseShrunk(document: PdfDocument): void {
  for (const page of pagesOf(document)) {
    const found = areaScale.exec(contentOf(document, page).slice(0, 4000))
    if (!found) continue
    const size = Number(found[3]) / fullSize
    if (size < 0.999)
      throw noRoom(
        `printed at ${Math.round(size * 100)} % of its size: something is wider than its page`,
      )
    return
  }
}

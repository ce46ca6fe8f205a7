import type { PdfAbout } from '../finish/finish-pdf.ts'
import { freshFonts } from '../page/open-page.ts'
import { toPdf } from '../page/to-pdf.ts'
import type { Copy, Press } from '../press/press.ts'
import { finishPrinted } from '../press/print-pages.ts'
import { fitCards } from './fit-cards.ts'

/**
 * Prints pocket cards in the largest type that each has room for.
 * @throws Error when a card holds too much.
 */
export async function printCards(press: Press, cards: Copy, about: PdfAbout): Promise<Uint8Array> {
  const bytes = await press.run(cards, {}, async (page) => {
    await fitCards(page)
    // Of all the sizes that were tried only the last may be on paper.
    await freshFonts(page)
    return toPdf(page)
  })
  return finishPrinted(press, bytes, about)
}

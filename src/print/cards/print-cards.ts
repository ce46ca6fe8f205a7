import type { PdfAbout } from '../finish/finish-pdf.ts'
import { lay } from '../lay/lay.ts'
import { toPdf } from '../page/to-pdf.ts'
import type { Copy, Press } from '../press/press.ts'
import { finishPrinted } from '../press/print-pages.ts'

/**
 * Prints pocket cards in the largest type that each has room for.
 * @throws Error when a card holds too much.
 */
export async function printCards(press: Press, cards: Copy, about: PdfAbout): Promise<Uint8Array> {
  const bytes = await press.run(cards, {}, async (page) => {
    await lay(page, 'cards')
    return toPdf(page)
  })
  return finishPrinted(press, bytes, about)
}

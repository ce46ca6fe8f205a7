import { noRoom } from '../page/no-room.ts'
import type { LayingPage } from '../page/open-page.ts'

/**
 * Scales of the type that are tried, the largest first. At the smallest, nothing on a card is
 * smaller than 8 pt.
 */
const scales = [1.6, 1.5, 1.45, 1.4, 1.35, 1.3, 1.25, 1.2, 1.15, 1.1, 1.05, 1] as const

/**
 * Sets every card in the largest type at which all of it fits; where nothing does, the last
 * telephone numbers are left out, never a caution. Gives the names of cards that do not even fit
 * without them.
 */
function fitInPage(tried: readonly number[]): string[] {
  const fits = (card: PageElement): boolean =>
    tried.some((scale) => {
      card.style.setProperty('--scale', String(scale))
      return card.scrollHeight <= card.clientHeight && card.scrollWidth <= card.clientWidth
    })
  return [...document.querySelectorAll('.card')].flatMap((card) => {
    for (;;) {
      if (fits(card)) return []
      const last = card.querySelector('.card-phones tr:last-child')
      if (!last) return [card.id]
      last.remove()
    }
  })
}

/** @throws Error naming the cards that hold more than there is room for. */
export async function fitCards(page: LayingPage): Promise<void> {
  const full = await page.evaluate(fitInPage, scales)
  if (full.length > 0) throw noRoom(`more on a card than there is room for: ${full.join(', ')}`)
}

import { noRoom } from './no-room.ts'
import type { LayingPage } from './open-page.ts'

/** Texts of what reaches beyond the width, the innermost parts only. */
function widerInPage(width: number): readonly string[] {
  const { body } = document
  const before = body.style.getPropertyValue('width')
  body.style.setProperty('width', `${width}px`)
  const left = body.getBoundingClientRect().left
  const over = [...body.querySelectorAll('*')].filter(
    (e) => e.getBoundingClientRect().right - left > width + 0.5,
  )
  const inner = over.filter((e) => !over.some((other) => other !== e && e.contains(other)))
  body.style.setProperty('width', before)
  return inner.map((e) => (e.parentElement?.textContent ?? '').replace(/\s+/g, ' ').slice(0, 80))
}

/**
 * Makes sure that nothing is wider than the page: the browser would print the whole document smaller
 * for its sake.
 * @param width Of the text, CSS pixels.
 * @throws Error with the texts that are too wide.
 */
export async function refuseWide(page: LayingPage, width: number): Promise<void> {
  const wide = await page.evaluate(widerInPage, width)
  if (wide.length > 0) throw noRoom(`wider than the page: ${wide.join(' | ')}`)
}

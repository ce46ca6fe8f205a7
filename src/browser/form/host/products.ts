import { fill } from '../../../model/pattern.ts'
import type { Words } from '../../../validate/schemas/words.ts'
import { button, classed, element } from '../../element.ts'
import type { MadeInPage } from '../workshop/make-in-page.ts'
import { handOver } from './hand-over.ts'

const megabytes = (bytes: number): string => (bytes / 1_000_000).toFixed(1)

/** Offers what was made: the site as a folder, the manual in one file; and says what is not in it. */
export function showProducts(
  shelf: HTMLElement,
  { id, zip, oneFile, pages }: MadeInPage,
  words: Words,
): void {
  const bytes = new TextEncoder().encode(oneFile).length
  const offer = (name: string, about: string, act: () => void): HTMLElement =>
    element('li', button(name, act), classed('p', 'soft', about))
  const list = classed(
    'ul',
    'offers',
    offer(fill(words.maker.saveOne, { size: megabytes(bytes) }), words.maker.saveOneAbout, () =>
      handOver(`${id}-manual.html`, oneFile, 'text/html'),
    ),
    offer(
      fill(words.maker.saveSite, { size: megabytes(zip.length), pages }),
      words.maker.saveSiteAbout,
      () => handOver(`${id}-site.zip`, zip, 'application/zip'),
    ),
  )
  shelf.replaceChildren(classed('section', 'products', element('h2', words.maker.products), list))
}

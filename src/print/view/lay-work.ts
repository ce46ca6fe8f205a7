import { readingDistanceWords } from '../../compute/safety/reading-distance.ts'
import type { PrintWork } from '../../model/print-view.ts'
import { fitCards } from '../cards/fit-cards.ts'
import { bookletSides, pagesOfLeaf } from '../field-book/booklet-order.ts'
import { fitFieldBook } from '../field-book/fit-field-book.ts'
import { here } from '../page/here.ts'
import { installDrawings } from '../page/lift-drawings.ts'
import { fitSheets, sheetsToFit } from '../sheets/fit-sheets.ts'
import { layBinder } from './lay-binder.ts'

type Of<K extends PrintWork['kind']> = Extract<PrintWork, { kind: K }>

async function laySheets(book: PageElement, work: Of<'sheets'>): Promise<number> {
  await installDrawings(here)
  book.innerHTML = sheetsToFit(work.sheets)
  const fits = await fitSheets(here, work.capitals, (points) =>
    readingDistanceWords(points, work.system),
  )
  drawings.putBack()
  return fits.reduce((sum, { pages }) => sum + pages.length, 0)
}

/** Two pages beside each other, in the order in which leaves are folded. */
function fold(book: PageElement, leaves: readonly PageElement[]): number {
  const sides = bookletSides(leaves.length).map((pages) => {
    const side = document.createElement('div')
    side.className = 'folded'
    side.append(...pages.flatMap((page) => leaves[page - 1] ?? []))
    return side
  })
  book.replaceChildren(...sides)
  return sides.length
}

async function layBooklet(book: PageElement, work: Of<'booklet'>, scale: number): Promise<number> {
  book.innerHTML = work.body
  await fitFieldBook(here, work.room, scale)
  const leaves = [...document.querySelectorAll('.leaf')]
  if (work.folds && leaves.length % pagesOfLeaf === 0) return fold(book, leaves)
  book.replaceChildren(...leaves)
  return leaves.length
}

async function layCards(book: PageElement, { body }: Of<'cards'>): Promise<number> {
  book.innerHTML = body
  await fitCards(here)
  return book.querySelectorAll('.card-page').length
}

/**
 * Lays out what a page is to print.
 * @param scale What the page measures of a CSS pixel.
 * @param tell How much is done, from 0 to 1.
 * @returns how many pages the browser will print.
 * @throws Error naming what does not fit.
 */
export function layWork(
  book: PageElement,
  work: PrintWork,
  scale: number,
  tell: (share: number) => void,
): Promise<number> {
  if (work.kind === 'binder') return layBinder(book, work, scale, tell)
  if (work.kind === 'sheets') return laySheets(book, work)
  if (work.kind === 'booklet') return layBooklet(book, work, scale)
  return layCards(book, work)
}

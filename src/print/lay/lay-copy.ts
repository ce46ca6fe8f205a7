import { readingDistanceWords } from '../../compute/safety/reading-distance.ts'
import type { BookletRoom } from '../../model/booklet.ts'
import type { UnitSystem } from '../../model/quantity/kinds.ts'
import { foreseePages, type OwnPlaces } from '../binder/foresee-pages.ts'
import { layOpenings } from '../binder/openings/lay-openings.ts'
import { spanWide } from '../binder/span-wide.ts'
import { fitCards } from '../cards/fit-cards.ts'
import { fitFieldBook } from '../field-book/fit-field-book.ts'
import { here } from '../page/here.ts'
import { freshFonts } from '../page/open-page.ts'
import { refuseSmall } from '../page/refuse-small.ts'
import { refuseWide } from '../page/refuse-wide.ts'
import type { Copy } from '../press/press.ts'
import { fitSheets, type SheetFit } from '../sheets/fit-sheets.ts'

// What is done with a document before it is printed, each in one go inside the page that holds it.

/** Puts a document into the page, with fonts that nothing has used before. */
export async function begin({ css, body }: Copy): Promise<void> {
  document.body.replaceChildren()
  await freshFonts(here)
  setStyle(css)
  const { body: shown } = document
  shown.className = ''
  // Nobody looks at it: what is not seen is laid out and never painted.
  shown.style.setProperty('visibility', 'hidden')
  shown.innerHTML = body
  drawings.begin()
}

function setStyle(css: string): void {
  const own = document.getElementById('own')
  if (own) own.textContent = css
}

/** Of the text, CSS pixels. */
type Area = { readonly width: number; readonly height: number }

/**
 * Lays a part of a binder out, held at the width of the text until it is printed, so that all of it is
 * laid out once.
 * @returns numbers that were put in for its own pages, by place.
 */
export async function part({
  area,
  places,
}: {
  readonly area: Area
  readonly places: OwnPlaces
}): Promise<Readonly<Record<string, string>>> {
  document.body.style.setProperty('width', `${area.width}px`)
  await spanWide(here, area)
  await layOpenings(here, area)
  const foreseen = await foreseePages(here, places)
  await refuseWide(here, area.width)
  await refuseSmall(here, area.width)
  return foreseen
}

/** Lays sheets out on a paper. @param capitals Height of the capitals of steps, mm, at the least. */
export async function sheets({
  css,
  capitals,
  system,
}: {
  readonly css: string
  readonly capitals: number
  readonly system: UnitSystem
}): Promise<readonly SheetFit[]> {
  setStyle(css)
  document.body.className = 'color'
  const fits = await fitSheets(here, capitals, (points) => readingDistanceWords(points, system))
  // Of all the sizes that were tried only the last may be on paper, which both inks have alike.
  await freshFonts(here)
  return fits
}

/** Lays a booklet out. @returns how many pages it has. */
export async function fieldBook(room: BookletRoom): Promise<number> {
  const fitted = await fitFieldBook(here, room)
  await refuseSmall(here)
  await freshFonts(here)
  return fitted.length
}

/** Sets pocket cards. */
export async function cards(): Promise<void> {
  await fitCards(here)
  await freshFonts(here)
}

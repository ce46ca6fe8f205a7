import type { TextArea } from '../binder/openings/lay-openings.ts'

/** Between two columns, CSS pixels. */
const gap = 40

/** How long a part of a document is, and where in it some places are, in pages. */
export type PagesOf = {
  readonly pages: number
  /** Page, from 0, by id. */
  readonly places: ReadonlyMap<string, number>
}

/** What a part is laid out in. */
export type Columns = {
  readonly area: TextArea
  /** What the page measures of a CSS pixel. */
  readonly scale: number
}

/** A hair of height that a page on paper may have more or less than one on the screen, CSS pixels. */
const hair = 2

/** Marks what begins a page whatever else happens; its style breaks the column, or the page. */
const begins = 'begins-page'

/** More breaks on the edge than this stay as they are. */
const mostForced = 60

/** What a page may begin with. */
const blocks = 'section,article,div,p,h1,h2,h3,table,tr,ul,ol,li,dl,figure'

/**
 * Lays a part out in columns as large as the text of a page, which break where pages break, and looks
 * at it. Its style has column breaks where pages are broken.
 * @param look Is given the page, from 0, of an element.
 * @param less How much lower than a page columns are, CSS pixels.
 */
function inColumns<T>(
  part: PageElement,
  { area, scale }: Columns,
  less: number,
  look: (pageOf: (element: PageElement) => number) => T,
): T {
  // What a page has room for is rounded up to whole pixels where it is printed.
  const [width, height] = [Math.ceil(area.width), Math.ceil(area.height) - less]
  const set = { width, height, 'column-width': width, 'column-gap': gap }
  for (const [name, value] of Object.entries(set)) part.style.setProperty(name, `${value}px`)
  part.style.setProperty('column-fill', 'auto')
  const { left } = part.getBoundingClientRect()
  // What begins by a hair before its column belongs to that all the same.
  const pageOf = (element: PageElement): number =>
    Math.floor(
      (element.getBoundingClientRect().left - left + (gap * scale) / 2) / ((width + gap) * scale),
    )
  const seen = look(pageOf)
  for (const name of [...Object.keys(set), 'column-fill']) part.style.setProperty(name, '')
  return seen
}

/** Whether an element stands in columns of its own page, where a break would be one of these. */
function isInOwnColumns(element: PageElement, part: PageElement): boolean {
  for (let at = element.parentElement; at && at !== part; at = at.parentElement)
    if (getComputedStyle(at).columnCount !== 'auto') return true
  return false
}

/**
 * Forces breaks where a hair of height would decide on which page something begins, so that it begins
 * there on paper too.
 */
export function settleBreaks(part: PageElement, columns: Columns): void {
  const elements = [...part.querySelectorAll(blocks)]
  const pages = (less: number): readonly number[] =>
    inColumns(part, columns, less, (pageOf) => elements.map(pageOf))
  for (let forced = 0; forced < mostForced; forced++) {
    const [usual, lower] = [pages(0), pages(hair)]
    const first = elements.find((element, i) => {
      const page = lower[i] ?? 0
      const isOnEdge = page > (usual[i] ?? 0) && !element.className.includes(begins)
      return isOnEdge && !isInOwnColumns(element, part)
    })
    if (!first) return
    first.classList.add(begins)
  }
}

/**
 * Counts the pages of a part.
 * @param ids Places that are asked for; those that are not in it are left out.
 */
export const countPages = (part: PageElement, columns: Columns, ids: readonly string[]): PagesOf =>
  inColumns(part, columns, 0, (pageOf) => {
    const width = Math.ceil(columns.area.width) + gap
    const places = ids.flatMap((id): (readonly [string, number])[] => {
      const place = document.getElementById(id)
      return place && part.contains(place) ? [[id, pageOf(place)]] : []
    })
    return { pages: Math.round((part.scrollWidth + gap) / width), places: new Map(places) }
  })

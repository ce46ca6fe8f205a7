import type { BrowserPage } from '../page/open-page.ts'

/** Type sizes that are tried, points. Below the smallest nobody can read a sheet on a wall. */
const smallest = 7.5
const largest = 48
const grain = 0.25

/** Steps are set a fifth larger than the rest of a sheet; the style sheet says the same. */
const stepSize = 1.2

/**
 * How much larger than the rest the steps may be set where the column beside them would hold them
 * back.
 */
const largestGrowth = 1.5

export type SheetFit = {
  /** Type size of the sheet, points. */ readonly points: number
  readonly growth: number
}

/** Size of the type in which the steps are set, points. */
const stepPoints = (fit: SheetFit): number => fit.points * fit.growth * stepSize

/**
 * Finds the largest type at which nothing overflows, then the largest at which the steps still do
 * not; null where not even the smallest type fits. Leaves the sheet set in what it found.
 */
function searchInPage(
  low: number,
  high: number,
  step: number,
  mostGrowth: number,
): { points: number; growth: number } | null {
  const sheet = document.querySelector('.sheet')
  const box = sheet?.querySelector('.sheet-fit')
  if (!sheet || !box) return null
  const columns = sheet.querySelector('.columns')
  const inner = [...sheet.querySelectorAll('.steps, .side')]
  const nothingOver = (): boolean => {
    if (box.scrollHeight > box.clientHeight || box.scrollWidth > box.clientWidth) return false
    const floor = columns?.getBoundingClientRect().bottom ?? Infinity
    // Columns may overflow their row without making the page scroll, so their last lines are looked
    // at too.
    return inner.every((column) =>
      [...column.querySelectorAll('li, table, div, figure, p')].every(
        (e) => e.getBoundingClientRect().bottom <= floor + 0.5,
      ),
    )
  }
  const search = (from: number, to: number, fits: (n: number) => boolean): number | null => {
    if (!fits(from)) return null
    let [a, b] = [from, to]
    while (b - a > 1) {
      const middle = (a + b) >> 1
      if (fits(middle)) a = middle
      else b = middle
    }
    fits(a)
    return a
  }
  const set = (name: string, value: string): boolean => {
    sheet.style.setProperty(name, value)
    return nothingOver()
  }
  set('--grow', '1')
  const size = search(Math.round(low / step), Math.round(high / step), (n) =>
    set('--fs', `${n * step}pt`),
  )
  if (size === null) return null
  const growth = search(50, Math.round(mostGrowth * 50), (n) => set('--grow', String(n / 50))) ?? 50
  return { points: size * step, growth: growth / 50 }
}

const fillDistance = (page: BrowserPage, words: string): Promise<void> =>
  page.evaluate((text) => {
    for (const slot of document.querySelectorAll('[data-reading-distance]')) slot.textContent = text
  }, words)

/** Searches before giving up: two that agree are enough. */
const mostSearches = 6

/**
 * Sets the sheet on a page in the largest type that fits, with the distance put in at which that
 * can be read.
 * @param distance Says how far type of a size (points) can be read.
 * @throws Error when it does not fit at the smallest type.
 */
export async function fitSheet(
  page: BrowserPage,
  distance: (points: number) => string,
): Promise<SheetFit> {
  let before: SheetFit | undefined
  for (let round = 0; round < mostSearches; round++) {
    const now = await page.evaluate(searchInPage, smallest, largest, grain, largestGrowth)
    if (now === null) throw new Error(`too long for one page at ${smallest} pt`)
    if (before !== undefined && now.points === before.points && now.growth === before.growth)
      return now
    // The words put in take room of their own, so the search is run again with them, until it finds
    // the same twice.
    await fillDistance(page, distance(stepPoints(now)))
    before = now
  }
  throw new Error('its type size does not settle')
}

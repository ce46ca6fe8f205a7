import type { BrowserPage } from '../page/open-page.ts'

/** Type sizes that are tried, points. Below the smallest nobody can read a sheet on a wall. */
const smallest = 7.5
const largest = 48
const grain = 0.25

/** Steps are set a fifth larger than the rest of a sheet; the style sheet says the same. */
const stepSize = 1.2

/**
 * How much larger than the rest the steps may be set where other things would hold them back.
 */
const largestGrowth = 1.5

/** Points in a millimeter, and what of the size of the type its capitals are high. */
const [pointsInMillimeter, capitalShare] = [72 / 25.4, 0.656]

/** What one page of a sheet is set in. */
export type PageFit = {
  /** Type size of the page, points. */ readonly points: number
  readonly growth: number
}

/** How a sheet is parted, and what each of its pages is set in. */
export type SheetFit = { readonly layout: string; readonly pages: readonly PageFit[] }

/** Size of the type in which the steps are set, points. */
const stepPoints = (fit: PageFit): number => fit.points * fit.growth * stepSize

/** Height of the capitals of the steps of a page, mm. */
export const capitalsOf = (fit: PageFit): number =>
  (stepPoints(fit) * capitalShare) / pointsInMillimeter

type Sizes = {
  readonly low: number
  readonly high: number
  readonly grain: number
  readonly mostGrowth: number
  /** What the steps should be set in at the least, over what the page is. */
  readonly least: number
}

/**
 * In the page: keeps the first layout in which all steps can be large enough (the last where none
 * can), and sets each of its pages in the largest type at which nothing overflows, then the steps
 * in the largest at which it still does not. Null where not even the smallest type fits.
 */
function fitInPage({ low, high, grain: step, mostGrowth, least }: Sizes): SheetFit | null {
  const overflows = (sheet: PageElement): boolean => {
    const box = sheet.querySelector('.sheet-fit')
    if (!box || box.scrollHeight > box.clientHeight || box.scrollWidth > box.clientWidth)
      return true
    // Columns may overflow their row without making the page scroll, so their last lines are looked
    // at too.
    const floor = sheet.querySelector('.columns')?.getBoundingClientRect().bottom ?? Infinity
    return [...sheet.querySelectorAll('.ways *, .side *')].some(
      (e) => e.getBoundingClientRect().bottom > floor + 0.5,
    )
  }
  const set = (sheet: PageElement, points: number, growth: number): boolean => {
    sheet.style.setProperty('--fs', `${points}pt`)
    sheet.style.setProperty('--grow', String(growth))
    return !overflows(sheet)
  }
  const pagesOf = (layout: PageElement): PageElement[] => [...layout.querySelectorAll('.sheet')]
  const layouts = [...document.querySelectorAll('.layout')]
  const show = (shown: PageElement): void => {
    for (const l of layouts) l.style.display = l === shown ? '' : 'none'
  }
  const isLargeEnough = (layout: PageElement): boolean => {
    show(layout)
    return pagesOf(layout).every(
      (sheet) => set(sheet, least, 1) || set(sheet, least / mostGrowth, mostGrowth),
    )
  }
  const kept = layouts.length === 1 ? layouts[0] : (layouts.find(isLargeEnough) ?? layouts.at(-1))
  if (!kept) return null
  show(kept)
  for (const l of layouts) if (l !== kept) l.remove()
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
  const [first, last] = [Math.round(low / step), Math.round(high / step)]
  const fitOne = (sheet: PageElement): PageFit | null => {
    const size = search(first, last, (n) => set(sheet, n * step, 1))
    if (size === null) return null
    const points = size * step
    const growth =
      (search(50, Math.round(mostGrowth * 50), (n) => set(sheet, points, n / 50)) ?? 50) / 50
    if (points * growth >= least) return { points, growth }
    // Steps as large as they should be; what stands around them as large as that allows.
    const from = least / mostGrowth
    const around = (i: number): PageFit => {
      const size = from + ((least - from) * i) / 24
      return { points: size, growth: least / size }
    }
    const found = search(0, 24, (i) => set(sheet, around(i).points, around(i).growth))
    if (found !== null) return around(found)
    set(sheet, points, growth)
    return { points, growth }
  }
  const pages = pagesOf(kept).map(fitOne)
  return pages.some((p) => p === null)
    ? null
    : { layout: kept.dataset['layout'] ?? '', pages: pages as PageFit[] }
}

const fillDistances = (page: BrowserPage, words: readonly string[]): Promise<void> =>
  page.evaluate((texts) => {
    for (const [i, slot] of [...document.querySelectorAll('[data-reading-distance]')].entries())
      slot.textContent = texts[i] ?? ''
  }, words)

/** Searches before giving up: two that agree are enough. */
const mostSearches = 6

/**
 * Sets a sheet in the first of its layouts in which the capitals of its steps are high enough, each
 * page in the largest type that fits, with the distance put in at which that can be read.
 * @param capitals Height of the capitals of steps, mm, at the least; where no layout gives it, the
 * last one is taken.
 * @param distance Says how far type of a size (points) can be read.
 * @throws Error when it does not fit at the smallest type.
 */
export async function fitSheet(
  page: BrowserPage,
  capitals: number,
  distance: (points: number) => string,
): Promise<SheetFit> {
  const least = (capitals * pointsInMillimeter) / capitalShare / stepSize
  const sizes = { low: smallest, high: largest, grain, mostGrowth: largestGrowth, least }
  let before: SheetFit | undefined
  for (let round = 0; round < mostSearches; round++) {
    const now = await page.evaluate(fitInPage, sizes)
    if (now === null) throw new Error(`too long at ${smallest} pt`)
    if (before !== undefined && JSON.stringify(now) === JSON.stringify(before)) return now
    // The words put in take room of their own, so the search is run again with them, until it finds
    // the same twice.
    await fillDistances(
      page,
      now.pages.map((fit) => distance(stepPoints(fit))),
    )
    before = now
  }
  throw new Error('its type size does not settle')
}

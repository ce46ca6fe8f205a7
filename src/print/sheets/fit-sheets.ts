import type { Sheet } from '../../render/sheets/render-sheets.ts'
import { noRoom } from '../page/no-room.ts'
import type { LayingPage } from '../page/open-page.ts'
import { installSearch } from './search-in-page.ts'

/** Type sizes that are tried, points. Below the smallest nobody can read a sheet on a wall. */
const smallest = 7.5
const largest = 48

/** Steps are set a fifth larger than the rest of a sheet; the style sheet says the same. */
const stepSize = 1.2

/**
 * How much larger than the rest the steps may be set where other things would hold them back.
 */
const largestGrowth = 1.5

/** Points in a millimeter, and what of the size of the type its capitals are high. */
const [pointsInMillimeter, capitalShare] = [72 / 25.4, 0.656]

type Posted = Pick<Sheet, 'id' | 'pages' | 'layouts' | 'drawings'>

/** What one page of a sheet is set in. */
export type PageFit = {
  /** Type size of the page, points. */ readonly points: number
  readonly growth: number
}

/** How a sheet is parted, and what each of its pages is set in. */
export type SheetFit = {
  readonly id: string
  readonly layout: string
  readonly pages: readonly PageFit[]
}

/** Size of the type in which the steps are set, points. */
const stepPoints = (fit: PageFit): number => fit.points * fit.growth * stepSize

/** Height of the capitals of the steps of a page, mm. */
export const capitalsOf = (fit: PageFit): number =>
  (stepPoints(fit) * capitalShare) / pointsInMillimeter

type Sizes = {
  /** The longest words that say how far a page can be read. */
  readonly widest: string
  readonly low: number
  readonly high: number
  readonly mostGrowth: number
  /** What the steps should be set in at the least, over `stepSize`. */
  readonly least: number
}

/**
 * In the page: shows of each sheet the first layout in which all steps can be large enough, the
 * last where none can.
 */
function showLayouts({ widest, mostGrowth, least }: Sizes): void {
  /** Whether no room is left to set what stands around the steps as large as usual beside them. */
  const isFull = ({ used, growing, room }: SheetMeasure): boolean =>
    growing + (used - growing) * mostGrowth ** 1.7 > room
  function* show(posted: PageElement): SheetWork<void> {
    const shown = posted.querySelector('.layout')
    if (!shown) throw new Error('a sheet without a place')
    const lifted = new Map(
      [...posted.querySelectorAll('script[data-drawing]')].map((kept) => {
        const holder = document.createElement('div')
        holder.innerHTML = kept.textContent ?? ''
        drawings.lift(holder)
        return [kept.dataset['drawing'], holder.innerHTML]
      }),
    )
    const bodies = [...posted.querySelectorAll('script[data-page]')].map((e) => e.textContent ?? '')
    for (const layout of posted.querySelectorAll('script[data-layout]')) {
      const places = (layout.textContent ?? '').split(' ')
      shown.innerHTML = places.map((place) => bodies[Number(place)] ?? '').join('')
      for (const slot of shown.querySelectorAll('[data-drawing]'))
        slot.outerHTML = lifted.get(slot.dataset['drawing']) ?? ''
      shown.dataset['layout'] = layout.dataset['layout']
      for (const slot of shown.querySelectorAll('[data-reading-distance]'))
        slot.textContent = widest
      const pages = [...shown.querySelectorAll('.sheet')]
      for (const { style } of pages) {
        style.setProperty('--fs', `${least / mostGrowth}pt`)
        style.setProperty('--grow', String(mostGrowth))
      }
      const measures = yield pages
      pages.forEach((sheet, i) => {
        const measure = measures[i]
        if (measure && isFull(measure)) sheet.classList.add('full')
      })
      if (measures.every(sheetSearch.fits)) return
    }
  }
  document.body.classList.add('fit')
  sheetSearch.together([...document.querySelectorAll('.posted')].map(show))
}

/**
 * In the page: sets each page in the largest type at which nothing overflows, then its steps in the
 * largest at which it still does not. Where the steps would be too small, they are set as large as
 * they should be, and what stands around them as large as that allows.
 */
function setSizes({ low, high, mostGrowth, least }: Sizes): (PageFit | null)[] {
  const { largest } = sheetSearch
  /** Steps of sizes in the least, and of growth in one. */
  const [grain, ofGrowth] = [72, 50]
  const least1 = Math.round(grain / mostGrowth)
  function* fitOne(sheet: PageElement): SheetWork<PageFit | null> {
    const set = ({ points, growth }: PageFit): void => {
      sheet.style.setProperty('--fs', `${points}pt`)
      sheet.style.setProperty('--grow', String(growth))
    }
    const even = (n: number): PageFit => ({ points: (least * n) / grain, growth: 1 })
    const steady = (n: number): PageFit => ({ ...even(n), growth: grain / n })
    const evenly = (from: number, to: number, start: number) =>
      largest(
        sheet,
        { from, to, start },
        (n) => set(even(n)),
        (m) => m.used,
      )
    const around = (m: SheetMeasure): number => m.used - m.growing
    const range = { from: least1, to: grain - 1, start: least1 }
    const steadily = () => largest(sheet, range, (n) => set(steady(n)), around)
    // What is most likely is tried first.
    const isFull = sheet.className.includes('full')
    let kept = isFull ? yield* steadily() : null
    if (kept && kept.at < range.to) return steady(kept.at)
    let size = yield* evenly(grain, Math.floor((high * grain) / least), grain)
    if (!size) {
      if (!isFull) kept = yield* steadily()
      if (kept) {
        set(steady(kept.at))
        return steady(kept.at)
      }
      size = yield* evenly(Math.ceil((low * grain) / least), range.to, least1)
    }
    if (!size) return null
    const { points } = even(size.at)
    const { used, room, growing } = size.measure
    if (used + (0.6 * growing) / ofGrowth > room) return { points, growth: 1 }
    const grown = (n: number): PageFit => ({ points, growth: n / ofGrowth })
    const more = { from: ofGrowth + 1, to: mostGrowth * ofGrowth, start: ofGrowth + 1 }
    const found = yield* largest(
      sheet,
      more,
      (n) => set(grown(n)),
      (m) => m.growing,
    )
    if (found) return grown(found.at)
    set({ points, growth: 1 })
    return { points, growth: 1 }
  }
  const fits = sheetSearch.together([...document.querySelectorAll('.sheet')].map(fitOne))
  document.body.classList.remove('fit')
  return [...fits]
}

/**
 * In the page: sets every page as it was found to fit and puts in how far it can be read.
 * @returns pages on which anything is cut off, from 0.
 */
function setAndLook(fits: readonly PageFit[], words: readonly string[]): number[] {
  const slots = document.querySelectorAll('[data-reading-distance]')
  for (const [i, slot] of [...slots].entries()) slot.textContent = words[i] ?? ''
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
  const pages = [...document.querySelectorAll('.sheet')]
  for (const [i, { style }] of pages.entries()) {
    style.setProperty('--fs', `${fits[i]?.points}pt`)
    style.setProperty('--grow', String(fits[i]?.growth))
  }
  return pages.flatMap((sheet, i) => (overflows(sheet) ? [i] : []))
}

/** A little smaller: steps that were grown first. */
const smaller = ({ points, growth }: PageFit): PageFit =>
  growth > 1 ? { points, growth: Math.max(1, growth - 0.02) } : { points: points * 0.985, growth }

/** A line that just fitted may break a hair later: the browser's widths hang on what it drew before. */
const mostSteps = 6

/**
 * Sets all pages, and those a little smaller on which something would be cut off after all.
 * @param left How often they may be made smaller.
 * @throws Error naming sheets on which something is cut off all the same.
 */
async function settle(
  page: LayingPage,
  sheets: readonly SheetFit[],
  distance: (points: number) => string,
  left = mostSteps,
): Promise<readonly SheetFit[]> {
  const fits = sheets.flatMap(({ pages }) => pages)
  const words = fits.map((fit) => distance(stepPoints(fit)))
  const cut = new Set(await page.evaluate(setAndLook, fits, words))
  if (cut.size === 0) return sheets
  const smallerFits = fits.map((fit, i) => (cut.has(i) ? smaller(fit) : fit))
  if (left === 0) {
    const owners = sheets.flatMap(({ id, pages }) => pages.map(() => id))
    const named = new Set(owners.filter((_, i) => cut.has(i)))
    throw noRoom(`sheet ${[...named].join(', ')}: something is cut off`)
  }
  const own = (sheet: SheetFit): SheetFit => ({
    ...sheet,
    pages: smallerFits.splice(0, sheet.pages.length),
  })
  return settle(page, sheets.map(own), distance, left - 1)
}

/** In the page: which layout is shown of each sheet, and how many pages it has. */
const shownLayouts = (): { id: string; layout: string; pages: number }[] =>
  [...document.querySelectorAll('.posted')].map((posted) => ({
    id: posted.dataset['sheet'] ?? '',
    layout: posted.querySelector('.layout')?.dataset['layout'] ?? '',
    pages: posted.querySelectorAll('.sheet').length,
  }))

const keptAs = (name: string, value: string | number, body: string): string =>
  `<script type="text/html" data-${name}="${value}">${body}</script>`

/**
 * A document with sheets to be fitted, each with the pages of all its layouts and its drawing; these
 * are read when they are tried.
 */
export const sheetsToFit = (sheets: readonly Posted[]): string =>
  sheets
    .map(({ id, pages, layouts, drawings }) => {
      const kept = [
        ...drawings.map(({ size, body }) => keptAs('drawing', size, body)),
        ...pages.map((body, i) => keptAs('page', i, body)),
        ...layouts.map((layout) => keptAs('layout', layout.name, layout.pages.join(' '))),
      ]
      return `<div class="posted" data-sheet="${id}">${kept.join('')}<div class="layout"></div></div>`
    })
    .join('')

/**
 * Sets each sheet of a document made by `sheetsToFit` in the first of its layouts in which the
 * capitals of its steps are high enough, each page in the largest type that fits, with the distance
 * put in at which that can be read. All sheets are searched side by side, a size for each in every
 * round, so that the browser lays out all of them at once.
 * @param capitals Height of the capitals of steps, mm, at the least; where no layout gives it, the
 * last one is taken.
 * @param distance Says how far type of a size (points) can be read.
 * @throws Error naming the sheet that does not fit at the smallest type.
 */
export async function fitSheets(
  page: LayingPage,
  capitals: number,
  distance: (points: number) => string,
): Promise<readonly SheetFit[]> {
  const least = (capitals * pointsInMillimeter) / capitalShare / stepSize
  const widest = distance(stepPoints({ points: largest, growth: largestGrowth }))
  const sizes = { widest, low: smallest, high: largest, mostGrowth: largestGrowth, least }
  await installSearch(page)
  await page.evaluate(showLayouts, sizes)
  const found = await page.evaluate(setSizes, sizes)
  const fits = (await page.evaluate(shownLayouts)).map(({ pages, ...sheet }) => {
    const own = found.splice(0, pages).flatMap((fit) => fit ?? [])
    if (own.length < pages) throw noRoom(`sheet ${sheet.id}: too long at ${smallest} pt`)
    return { ...sheet, pages: own }
  })
  return settle(page, fits, distance)
}

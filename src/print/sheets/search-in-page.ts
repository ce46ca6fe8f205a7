import type { LayingPage } from '../page/open-page.ts'

/** In the page: what a search of type sizes is made of, where later functions find it. */
function install(): void {
  /** Nobody sees half a pixel. */
  const hair = 0.4
  const heightOf = (e: PageElement): number => e.getBoundingClientRect().height
  const measure = (sheet: PageElement): SheetMeasure => {
    const box = sheet.querySelector('.sheet-fit')
    const end = box?.lastElementChild
    if (!box || !end) throw new Error('a sheet without words')
    const { top, height } = box.getBoundingClientRect()
    const growing = [...box.querySelectorAll('.look, .ways, .emergency')]
    return {
      used: end.getBoundingClientRect().bottom - top,
      room: height,
      growing: growing.map(heightOf).reduce((sum, h) => sum + h, 0),
      isWide: box.scrollWidth > box.clientWidth,
    }
  }
  const fits = (m: SheetMeasure | undefined): boolean =>
    m !== undefined && m.used <= m.room + hair && !m.isWide
  function together<T>(works: readonly SheetWork<T>[]): readonly T[] {
    const results: T[] = []
    let open = works.map((work, i) => ({ i, work, asked: work.next() }))
    for (;;) {
      for (const { i, asked } of open) if (asked.done) results[i] = asked.value
      open = open.filter(({ asked }) => !asked.done)
      if (open.length === 0) return results
      // Read everything before anything is changed: the first reading lays all of it out.
      const read = open.map(({ asked }) => (asked.done ? [] : asked.value.map(measure)))
      open = open.map(({ i, work }, k) => ({ i, work, asked: work.next(read[k] ?? []) }))
    }
  }
  /** The step at which a part of this height would fill the room, after what two steps have shown. */
  const guess = (at: number, m: SheetMeasure, part: number, power: number): number => {
    const wanted = Math.max(part + m.room + hair - m.used, part / 4)
    return Math.floor(at * (wanted / part) ** (1 / power))
  }
  const largest: typeof sheetSearch.largest = function* (sheet, { from, to, start }, set, grows) {
    let [low, high, at] = [from - 1, to + 1, start]
    let found: SheetMeasure | undefined
    let before: { readonly at: number; readonly part: number } | undefined
    // Words fill an area: their height goes with the square of their size.
    let power = 2
    for (let round = 0; high - low > 1; round++) {
      at = Math.min(Math.max(at, low + 1), high - 1)
      set(at)
      const [m] = yield [sheet]
      if (!m) throw new Error('nothing was measured')
      const part = Math.max(grows(m), 1)
      if (fits(m)) {
        ;[low, found] = [at, m]
        // A step more makes it at least so much higher, but for what does not grow.
        if (m.used + (0.6 * part) / at > m.room + hair) high = at + 1
      } else high = at
      if (before && before.at !== at)
        power = Math.min(Math.max(Math.log(part / before.part) / Math.log(at / before.at), 1), 3)
      before = { at, part }
      at = m.isWide || round > 4 ? (low + high) >> 1 : guess(at, m, part, power)
    }
    if (!found) return null
    set(low)
    return { at: low, measure: found }
  }
  globalThis.sheetSearch = { together, fits, largest }
}

/** Makes a page ready for searches of type sizes on many sheets at once. */
export const installSearch = (page: LayingPage): Promise<void> => page.evaluate(install)

import type { Destination } from '../inspect/destinations.ts'

const numerals: readonly (readonly [number, string])[] = [[100, 'c'], [90, 'xc'], [50, 'l'], [40, 'xl'], [10, 'x'], [9, 'ix'], [5, 'v'], [4, 'iv'], [1, 'i']]

/** 4 → `iv`, for the pages before the body. */
export function roman(n: number): string {
  let rest = n
  return numerals.reduce((text, [value, numeral]) => {
    const times = Math.floor(rest / value)
    rest -= times * value
    return text + numeral.repeat(times)
  }, '')
}

/** The number that stands on a page: roman before the body begins, arabic from there. Pages count from 0. */
export const pageLabel = (page: number, bodyStart: number): string => (page < bodyStart ? roman(page + 1) : String(page - bodyStart + 1))

/**
 * What to print in each slot.
 * @throws Error when a slot names a place that no link leads to, so that it has no page.
 */
export function slotLabels(slots: readonly string[], places: ReadonlyMap<string, Destination>, bodyStart: number): Readonly<Record<string, string>> {
  const lost = slots.filter((id) => !places.has(id))
  if (lost.length > 0) throw new Error(`page numbers are asked for places that nothing links to: ${lost.join(', ')}`)
  return Object.fromEntries(slots.map((id) => [id, pageLabel(places.get(id)?.page ?? 0, bodyStart)]))
}

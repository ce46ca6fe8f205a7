import type { Places } from '../../../edit/readings/places.ts'
import type { Spot } from '../../../edit/readings/table.ts'

/** What a grid has that stands in no table: it lasts as long as the page. */
const days = new Map<string, string>()
const places = new Map<string, Places>()
const misfits = new Map<string, string>()

const keyOf = (...parts: readonly (string | number)[]): string => JSON.stringify(parts)
const spotKey = (name: string, { date, station, offset }: Spot): string =>
  keyOf(name, date, station.toFixed(3), offset.toFixed(3))

/** The day that is shown of a table. */
export const shownDay = (name: string): string | undefined => days.get(name)
export const showDay = (name: string, date: string): void => void days.set(name, date)

/** The rows and columns of a day. */
export const knownPlaces = (name: string, date: string): Places | undefined =>
  places.get(keyOf(name, date))
export const keepPlaces = (name: string, date: string, of: Places): void =>
  void places.set(keyOf(name, date), of)

/** What is typed at a place and does not fit, so that it stands in no table. */
export const misfitAt = (name: string, spot: Spot): string | undefined =>
  misfits.get(spotKey(name, spot))
export function keepMisfit(name: string, spot: Spot, typed: string | undefined): void {
  if (typed === undefined) misfits.delete(spotKey(name, spot))
  else misfits.set(spotKey(name, spot), typed)
}

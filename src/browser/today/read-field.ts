import type { DayFact } from '../../model/manual/today.ts'
import { styleOf } from '../../model/quantity/format-quantity.ts'
import { kindOf, type UnitSystem } from '../../model/quantity/kinds.ts'
import { readQuantity } from '../../model/quantity/read-quantity.ts'
import { sameDims } from '../../model/quantity/units.ts'

/** A value (SI), or what is wrong with the text. */
export type Read =
  | { readonly ok: true; readonly si: number }
  | { readonly ok: false; readonly why: 'unread' | 'outside' | 'whole' }

const halfDay = 43_200
const day = 2 * halfDay

/** A number without a unit: `4`, `2 1/2`, `−3`, `4,5` where a comma stands for the point. */
const bare = /^[-−+]?[\d.,]*\s*(?:\d+\s*[/⁄]\s*\d+|[½¼¾⅛⅜⅝⅞⅓⅔])?$/u

/**
 * A time of day as people say it: `5:10` without its half of the day is the one nearest after
 * another time.
 * @param after Seconds after midnight.
 * @returns Seconds after midnight; undefined for what is no time.
 */
export function readTime(text: string, after: number): number | undefined {
  const hour = /^\s*(\d{1,2})\s*([ap]\.?m\.?)?\s*$/i.exec(text)
  const read = readQuantity(hour ? `${hour[1]}:00 ${hour[2] ?? ''}` : text)
  if (!read.ok || !/^\s*\d{1,2}(:|\s*[ap]|\s*$)/i.test(text)) return undefined
  const { si } = read.quantity
  const said = /[ap]\.?m/i.test(text) || si >= halfDay + 3600 || /^\s*0/.test(text)
  if (said) return si
  const away = (time: number): number => (((time - after) % day) + day) % day
  const other = (si + halfDay) % day
  return away(si) <= away(other) ? si : other
}

function quantityOf(text: string, { kind, step }: DayFact, system: UnitSystem) {
  const { unit } = styleOf(kind, system)
  const trimmed = text.trim()
  const isBare = trimmed !== '' && bare.test(trimmed)
  // Of "4,5" nobody means thousands where a touch adds a half.
  const pointed = step < 1 && /^\d+,\d{1,2}$/.test(trimmed) ? trimmed.replace(',', '.') : trimmed
  return readQuantity(isBare && unit !== '' ? `${pointed} ${unit}` : pointed, { plain: true })
}

/** Counts are whole. */
const isWhole = ({ kind }: DayFact): boolean => kind === 'count' || kind === 'whole'

/**
 * Reads what somebody has typed for a fact of the day; without a unit it is in the one that the
 * manual prints.
 * @param near The time that a time of day without its half is nearest after, s after midnight.
 */
export function readField(text: string, fact: DayFact, system: UnitSystem, near = 0): Read {
  const { kind, range } = fact
  if (kind === 'clock') {
    const si = readTime(text, near)
    return si === undefined ? { ok: false, why: 'unread' } : { ok: true, si }
  }
  const read = quantityOf(text, fact, system)
  if (!read.ok || !sameDims(read.quantity.dims, kindOf(kind).dims))
    return { ok: false, why: 'unread' }
  const { si } = read.quantity
  if (isWhole(fact) && !Number.isInteger(si)) return { ok: false, why: 'whole' }
  const slack = 1e-6 * Math.max(Math.abs(range[0]), Math.abs(range[1]))
  return si >= range[0] - slack && si <= range[1] + slack
    ? { ok: true, si }
    : { ok: false, why: 'outside' }
}

import type { KeptNumber, PastDay } from '../../model/records.ts'
import { median } from '../../validate/imports/median.ts'
import { type DayKept, daysOf, type Kept, rowsOf } from './kept.ts'
import { soundNumber } from './numbers.ts'
import { sampleForm, sampleMoisture } from './tables.ts'

/** Sound numbers of one kind that a day has: one, or all readings and samples. */
function valuesOf(name: KeptNumber, day: DayKept): readonly number[] {
  const texts =
    name === 'depth'
      ? Object.keys(day).flatMap((key) => (key.startsWith('depth@') ? day[key] : []))
      : name === 'moisture'
        ? rowsOf(day, sampleForm).map(({ texts: sample }) => sampleMoisture(sample))
        : [day[name]]
  return texts.flatMap((text) => soundNumber(name, text) ?? [])
}

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length

/**
 * A number over the season: what the manual knows, and what was written since, which outranks it.
 * Depth is the mean of its readings, moisture the middle sample.
 */
export function seasonOf(
  name: KeptNumber,
  kept: Kept,
  past: readonly PastDay[],
): readonly PastDay[] {
  const own = daysOf(kept).flatMap((date): PastDay[] => {
    const values = valuesOf(name, kept[date] ?? {})
    if (values.length === 0) return []
    const value = name === 'depth' ? mean(values) : median(values)
    return values.length === 1
      ? [{ date, value }]
      : [{ date, value, least: Math.min(...values), most: Math.max(...values) }]
  })
  const dates = new Set(own.map(({ date }) => date))
  return [...past.filter(({ date }) => !dates.has(date)), ...own].sort((a, b) =>
    a.date.localeCompare(b.date),
  )
}

import { isDay } from '../../model/day.ts'
import { printable } from '../../read/unprintable.ts'

/**
 * What a phone keeps: by day the texts that were written, each under its name. Numbers carry their
 * unit, so that they stay what they are whatever units a later manual has.
 */
export type DayKept = Readonly<Record<string, string>>
export type Kept = Readonly<Record<string, DayKept>>

/** The same with a text written under a name; an empty one is taken out, as is a day without any. */
export function written(kept: Kept, day: string, name: string, text: string): Kept {
  const { [name]: _, ...others } = kept[day] ?? {}
  const { [day]: __, ...days } = kept
  const said = printable(text).trim()
  const changed = said === '' ? others : { ...others, [name]: said }
  return Object.keys(changed).length === 0 ? days : { ...days, [day]: changed }
}

/** Days on which something was written, the oldest first. */
export const daysOf = (kept: Kept): readonly string[] => Object.keys(kept).sort()

/** The name of what is kept of a row of a form. @param row Counted from 1. */
export const rowName = (form: string, row: number, field: string): string =>
  `${form}.row-${row}.${field}`

/** The part of a name that says what it is, such as `station` of `moisture-log.row-2.station`. */
export const fieldOf = (name: string): string =>
  name.startsWith('depth@') ? 'depth' : name.replace(/^.*\.row-\d+\./, '')

/** Rows of a form on a day, in their order, each with its number and its texts by field. */
export function rowsOf(
  day: DayKept,
  form: string,
): readonly { readonly row: number; readonly texts: DayKept }[] {
  const rows = new Map<number, Record<string, string>>()
  for (const [name, text] of Object.entries(day)) {
    const [, row, field] = /\.row-(\d+)\.(.+)$/.exec(name) ?? []
    if (!name.startsWith(`${form}.row-`) || row === undefined || field === undefined) continue
    rows.set(Number(row), { ...rows.get(Number(row)), [field]: text })
  }
  return [...rows].sort(([a], [b]) => a - b).map(([row, texts]) => ({ row, texts }))
}

/** Two records in one; where they differ, the first stays, and it is counted. */
export function joined(kept: Kept, more: Kept): { readonly kept: Kept; readonly differ: number } {
  let [result, differ] = [kept, 0]
  for (const [day, texts] of Object.entries(more))
    for (const [name, text] of Object.entries(texts)) {
      const here = kept[day]?.[name]
      if (here === undefined) result = written(result, day, name, text)
      else if (here !== text.trim()) differ += 1
    }
  return { kept: result, differ }
}

const isTexts = (value: unknown): value is DayKept =>
  typeof value === 'object' &&
  value !== null &&
  Object.values(value).every((text) => typeof text === 'string')

/** What was kept, read from its text; what is none of it is left out. */
export function parseKept(text: string | null): Kept {
  try {
    const found: unknown = JSON.parse(text ?? '{}')
    if (typeof found !== 'object' || found === null) return {}
    return Object.fromEntries(
      Object.entries(found).filter(
        (entry): entry is [string, DayKept] => isDay(entry[0]) && isTexts(entry[1]),
      ),
    )
  } catch {
    return {}
  }
}

import type { ManualTable, TableRows } from '../../model/manual/schedule.ts'

type Row = TableRows[number]

/** What a row says beside its first cell, which is the time of a day. */
const saysOf = (row: Row): string => JSON.stringify(row.slice(1))

/** A row of several days: their times, and what all of them say. */
type Beside = { readonly times: string[]; readonly rest: Row }

/** Puts the rows of one more day in: beside the same rows, and new ones where they stand in its order. */
function addDay(rows: Beside[], day: TableRows, column: number): void {
  let at = 0
  for (const row of day) {
    const found = rows.findIndex((r, i) => i >= at && JSON.stringify(r.rest) === saysOf(row))
    const beside = rows[found] ?? { times: [], rest: row.slice(1) }
    if (found < 0) rows.splice(at, 0, beside)
    beside.times[column] = row[0] ?? ''
    at = (found < 0 ? at : found) + 1
  }
}

/**
 * Tables by race day as one, with a column of times for each day: what all days have in common is
 * said once. Tables of which there is only one stay as they are.
 */
export function besideEachOther(tables: readonly ManualTable[]): readonly ManualTable[] {
  const [first, ...others] = tables
  if (!first || others.length === 0 || tables.some((t) => t.days === undefined)) return tables
  const rows: Beside[] = []
  for (const [column, t] of tables.entries()) addDay(rows, t.rows, column)
  return [
    {
      ...first,
      title: first.title.replace(/:[^:]*$/, ''),
      days: undefined,
      heads: [...tables.map((t) => t.days ?? ''), ...first.heads.slice(1)],
      rows: rows.map(({ times, rest }) => [...tables.map((_, i) => times[i] ?? '–'), ...rest]),
      estimate: tables.some((t) => t.estimate),
    },
  ]
}

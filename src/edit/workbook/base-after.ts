import { dataWith } from '../data-with.ts'
import type { Value } from '../written.ts'
import type { Base, TableTexts } from './base.ts'
import { valueAt } from './cell-text.ts'
import type { Found, FoundList } from './found.ts'
import { inList, listedIn, namesOf, same } from './merge.ts'
import { sameTexts, tableKey } from './tables-named.ts'

const put = (data: unknown, path: readonly (string | number)[], value: unknown): unknown =>
  dataWith(data, path, value as Value | undefined)?.data ?? data

/** A list as far as sheet and file agree about it; what they do not agree about stays as it was. */
function listAfter({ subject, rows }: FoundList, then: unknown, after: unknown): unknown {
  const [old, now] = [listedIn(then, subject), listedIn(after, subject)]
  const names = namesOf(
    rows.map((row) => (key: string) => row.values.get(key)?.value),
    subject.knownBy,
  )
  const agreed = new Map<string, unknown>(old.names.map((name, i) => [name, old.items[i]]))
  for (const [i, row] of rows.entries()) {
    const name = names[i] ?? ''
    const item = now.items[now.names.indexOf(name)]
    if (row.faulty || item === undefined) continue
    let made: unknown = agreed.get(name) ?? {}
    for (const { field, value } of row.values.values()) {
      const said = valueAt(item, inList(field, subject))
      if (same(value, said)) made = put(made, inList(field, subject), said)
    }
    agreed.set(name, made)
  }
  // A line that is gone from both is forgotten.
  for (const name of agreed.keys())
    if (!names.includes(name) && !now.names.includes(name) && rows.every((row) => !row.faulty))
      agreed.delete(name)
  return [...agreed.values()]
}

/**
 * What a workbook is to be compared with next time: what it holds and the facility says, where they
 * agree; else what it was made of, so that the next change of either is still told from the other.
 * @param then What it was made of; undefined where nobody knows.
 * @param after What the facility says now.
 */
export function baseAfter(found: Found, then: Base | undefined, after: Base): Base {
  let data: unknown = then?.data ?? {}
  for (const { field, value } of found.values) {
    const said = valueAt(after.data, field.path)
    if (same(value, said) && !same(said, valueAt(data, field.path)))
      data = put(data, field.path, said)
  }
  for (const list of found.lists) {
    const made = listAfter(list, data, after.data)
    data = put(data, list.subject.at, Array.isArray(made) && made.length > 0 ? made : undefined)
  }
  const tables: Record<string, TableTexts> = { ...then?.tables }
  for (const { subject, index, texts } of found.tables) {
    const key = tableKey(subject, index)
    const said = after.tables[key]
    if (said && sameTexts(said, texts)) tables[key] = said
  }
  return { data, tables }
}

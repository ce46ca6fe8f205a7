import { idFor } from '../../model/id-for.ts'
import type { Found, FoundList, FoundRow, FoundValue } from './found.ts'

const valueIn = (values: readonly FoundValue[], key: string): FoundValue | undefined =>
  values.find((one) => one.field.path.join('.') === key)

/** The short name of a facility, made of its name where nobody has given one. */
function withId(values: readonly FoundValue[], data: unknown): readonly FoundValue[] {
  const [id, name] = [valueIn(values, 'id'), valueIn(values, 'name')]
  const has = (data as { readonly id?: unknown } | undefined)?.id !== undefined
  if (has || !id || id.value !== undefined || typeof name?.value !== 'string') return values
  const made = idFor(name.value)
  return made === '' ? values : values.map((one) => (one === id ? { ...id, value: made } : one))
}

/** A short name that no other of the list has. */
function freeId(name: string, taken: ReadonlySet<string>): string {
  const made = idFor(name)
  for (let n = 1; ; n++) {
    const id = n === 1 ? made : `${made}-${n}`
    if (!taken.has(id)) return id
  }
}

/** Machines with short names made of their names, where nobody has given one. */
function withIds(list: FoundList): FoundList {
  const field = list.subject.fields.find((f) => f.key === 'id')
  if (!field) return list
  const taken = new Set(list.rows.map((row) => String(row.values.get('id')?.value ?? '')))
  const rows = list.rows.map((row): FoundRow => {
    const name = row.values.get('name')
    if (row.values.get('id')?.value !== undefined || typeof name?.value !== 'string') return row
    const value = freeId(name.value, taken)
    if (value === '') return row
    taken.add(value)
    return { ...row, values: new Map([...row.values, ['id', { field, value, place: name.place }]]) }
  })
  return { ...list, rows }
}

/** What sheets hold, with the short names that nobody thinks of. */
export const completed = (found: Found, data: unknown): Found => ({
  ...found,
  values: withId(found.values, data),
  lists: found.lists.map(withIds),
})

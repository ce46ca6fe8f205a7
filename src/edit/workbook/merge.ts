import type { Place, Problem } from '../../model/problem.ts'
import type { Path } from '../../read/read-yaml.ts'
import { problemAt, type SourceFile } from '../../read/source-file.ts'
import type { Change } from '../splice.ts'
import type { Value } from '../written.ts'
import type { Base } from './base.ts'
import { cellText, valueAt } from './cell-text.ts'
import type { Field } from './fields.ts'
import type { Found, FoundList, FoundRow, FoundValue } from './found.ts'
import type { ListSubject } from './subjects.ts'

/** A change of the facility file, the cell that asks for it, and what stood there. */
export type Asked = Change & { readonly place: Place; readonly before: unknown }

/** What is to be changed, and where file and workbook were both changed. */
export type Merged = { readonly asked: readonly Asked[]; readonly problems: readonly Problem[] }

export const same = (a: unknown, b: unknown): boolean => cellText(a).trim() === cellText(b).trim()

/** Where a problem of a cell is shown. */
type Files = (place: Place) => SourceFile

const inWords = (value: unknown): string =>
  value === undefined || value === null ? 'nothing' : `"${cellText(value)}"`

const conflict = (files: Files, place: Place, before: unknown): Problem =>
  problemAt(
    files(place),
    place,
    'facility/odd',
    `the facility says ${inWords(before)} here by now, and this workbook was made before that`,
    { hint: `${makeAnew}; then type it there` },
  )

export const makeAnew =
  'npm run workbook with the folder alone makes the workbook anew with what the facility says; the old one is kept'

/** A cell that nobody has changed, of an entry that the file says otherwise by now. */
const older = (files: Files, { value, place }: FoundValue, now: unknown): Problem =>
  problemAt(
    files(place),
    place,
    'facility/odd',
    `the facility says ${inWords(now)} by now, and this cell still ${inWords(value)}: it was left as the facility says`,
    { hint: makeAnew, severity: 'warning' },
  )

/** A line of a list that the file has, or no longer has, while nobody has changed the sheet. */
const olderLine = (files: Files, place: Place, message: string): Problem =>
  problemAt(files(place), place, 'facility/odd', message, { hint: makeAnew, severity: 'warning' })

/**
 * What a cell asks for, against what the file says now and what it said when the workbook was made:
 * nothing where the cell is empty in a workbook that was not made here. Where nobody has changed the
 * cell and the file says otherwise, it is told.
 */
function askedOf(
  found: FoundValue,
  path: Path,
  now: unknown,
  then: { readonly value: unknown } | undefined,
  files: Files,
): Asked | Problem | undefined {
  const { value, place } = found
  if (same(value, now)) return undefined
  if (then === undefined)
    return value === undefined ? undefined : { path, value, place, before: now }
  if (same(value, then.value)) return older(files, found, now)
  if (!same(now, then.value)) return conflict(files, place, now)
  return { path, value, place, before: now }
}

/** What one of a list is known by, with a number where several are known by the same. */
export function namesOf(
  rows: readonly ((key: string) => unknown)[],
  knownBy: readonly string[],
): string[] {
  const seen = new Map<string, number>()
  return rows.map((get) => {
    const name = knownBy.map((key) => cellText(get(key)).trim().toLowerCase()).join('|')
    const count = seen.get(name) ?? 0
    seen.set(name, count + 1)
    return `${name}#${count}`
  })
}

export const inList = (field: Field, { at }: ListSubject): Path => field.path.slice(at.length)

/** The list of a file, and the name of each of it. */
export type Listed = { readonly items: readonly unknown[]; readonly names: readonly string[] }

export function listedIn(data: unknown, subject: ListSubject): Listed {
  const list = valueAt(data, subject.at)
  const items: readonly unknown[] = Array.isArray(list) ? list : []
  const names = namesOf(
    items.map((item) => (key: string) => valueAt(item, key.split('.'))),
    subject.knownBy,
  )
  return { items, names }
}

/** A line of the workbook as one of the list. */
function itemOf(row: FoundRow, subject: ListSubject): Value | undefined {
  const item: Record<string, Value> = {}
  for (const { field, value } of row.values.values()) {
    if (value === undefined) continue
    const path = inList(field, subject)
    let group: Record<string, Value> = item
    for (const step of path.slice(0, -1)) {
      const next = (group[String(step)] ?? {}) as Record<string, Value>
      group[String(step)] = next
      group = next
    }
    group[String(path.at(-1))] = value
  }
  return Object.keys(item).length === 0 ? undefined : item
}

/** Whether a line says the same as one of the list. */
const saysSame = (row: FoundRow, item: unknown, subject: ListSubject): boolean =>
  [...row.values.values()].every(({ field, value }) =>
    same(value, valueAt(item, inList(field, subject))),
  )

function mergeList(
  { subject, rows, place }: FoundList,
  data: unknown,
  base: Base | undefined,
  files: Files,
): Merged {
  const now = listedIn(data, subject)
  const then = base && listedIn(base.data, subject)
  const names = namesOf(
    rows.map((row) => (key: string) => row.values.get(key)?.value),
    subject.knownBy,
  )
  const made: (Asked | Problem)[] = []
  let next = now.items.length
  for (const [i, row] of rows.entries()) {
    if (row.faulty) continue
    const name = names[i] ?? ''
    const at = now.names.indexOf(name)
    const before = then ? { value: then.items[then.names.indexOf(name)] } : undefined
    if (at === -1) {
      const item = itemOf(row, subject)
      const isUntouched = before?.value !== undefined && saysSame(row, before.value, subject)
      if (isUntouched) made.push(olderLine(files, row.place, 'the facility no longer has this'))
      if (item === undefined || isUntouched) continue
      made.push({ path: [...subject.at, next], value: item, place: row.place, before: undefined })
      next += 1
      continue
    }
    for (const found of row.values.values()) {
      const path = inList(found.field, subject)
      const asked = askedOf(
        found,
        [...subject.at, at, ...path],
        valueAt(now.items[at], path),
        before && { value: valueAt(before.value, path) },
        files,
      )
      if (asked) made.push(asked)
    }
  }
  // A line that cannot be read may be any of them, so that none is missing for sure.
  const missing = rows.some((row) => row.faulty) ? [] : [...(then?.names ?? []).entries()].reverse()
  for (const [i, name] of missing) {
    const at = now.names.indexOf(name)
    if (names.includes(name) || at === -1) continue
    const path = [...subject.at, at]
    const item = now.items[at]
    made.push(
      same(JSON.stringify(item), JSON.stringify(then?.items[i]))
        ? { path, value: undefined, place, before: item }
        : conflict(files, place, valuesIn(item)),
    )
  }
  return parted([...made, ...addedSince(names, { now, then, place, files })])
}

/** Lines that the file has by now, of which the workbook knows nothing. */
function addedSince(
  names: readonly string[],
  known: {
    readonly now: Listed
    readonly then: Listed | undefined
    readonly place: Place
    readonly files: Files
  },
): readonly Problem[] {
  const { now, then, place, files } = known
  if (!then) return []
  return now.names.flatMap((name, i) =>
    names.includes(name) || then.names.includes(name)
      ? []
      : [
          olderLine(
            files,
            place,
            `the facility has by now ${inWords(valuesIn(now.items[i]))}, and this sheet has not`,
          ),
        ],
  )
}

/** What one of a list says, in a row. */
const valuesIn = (item: unknown): string =>
  typeof item === 'object' && item !== null
    ? Object.values(item)
        .map((value) => (Array.isArray(value) || typeof value !== 'object' ? cellText(value) : '…'))
        .join(', ')
    : String(item)

const isProblem = (made: Asked | Problem): made is Problem => 'severity' in made

const parted = (made: readonly (Asked | Problem)[]): Merged => ({
  asked: made.filter((one): one is Asked => !isProblem(one)),
  problems: made.filter(isProblem),
})

/**
 * What a workbook changes of a facility.
 * @param data What facility.yaml says now.
 * @param base What it said when the workbook was made; undefined for one that was not made here, which
 *   adds and changes and takes nothing away.
 */
export function merge(found: Found, data: unknown, base: Base | undefined, files: Files): Merged {
  const values = found.values.flatMap((one) => {
    const { path } = one.field
    return (
      askedOf(one, path, valueAt(data, path), base && { value: valueAt(base.data, path) }, files) ??
      []
    )
  })
  const lists = found.lists.map((list) => mergeList(list, data, base, files))
  const all = [parted(values), ...lists]
  return {
    asked: all.flatMap((m) => [...m.asked]),
    problems: all.flatMap((m) => [...m.problems]),
  }
}

import type { Path } from '../../read/read-yaml.ts'
import type { Change } from '../splice.ts'
import type { Value } from '../written.ts'
import { valueAt } from './data.ts'
import { answered, type Draft, draftOf } from './draft.ts'

type Group = Readonly<Record<string, unknown>>

const isGroup = (value: unknown): value is Group =>
  typeof value === 'object' && value !== null && !Array.isArray(value)

const same = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b)

const isListOfGroups = (value: unknown): value is readonly unknown[] =>
  Array.isArray(value) && value.every(isGroup)

/** Changes of a list of groups: entries one by one, further ones behind, those gone from the end. */
function listChanges(a: readonly unknown[], b: readonly unknown[], at: Path): readonly Change[] {
  const both = Math.min(a.length, b.length)
  return [
    ...b.slice(0, both).flatMap((value, i) => changesBetween(a[i], value, [...at, i])),
    ...b.slice(both).map((value, i) => ({ path: [...at, both + i], value: value as Value })),
    ...a.slice(both).map((_gone, i) => ({ path: [...at, a.length - 1 - i], value: undefined })),
  ]
}

/** The changes that lead from what one text says to what another says. */
function changesBetween(a: unknown, b: unknown, at: Path = []): readonly Change[] {
  if (same(a, b)) return []
  if (isGroup(a) && isGroup(b))
    return [...new Set([...Object.keys(a), ...Object.keys(b)])].flatMap((key) =>
      changesBetween(a[key], b[key], [...at, key]),
    )
  if (isListOfGroups(a) && isListOfGroups(b)) return listChanges(a, b, at)
  if (isGroup(b) && a === undefined)
    return Object.entries(b).flatMap(([key, value]) =>
      changesBetween(undefined, value, [...at, key]),
    )
  return [{ path: at, value: (b ?? undefined) as Value | undefined }]
}

/** An entry that both sides have changed, each in its own way. */
export type Clash = {
  readonly path: Path
  readonly mine: unknown
  readonly theirs: unknown
}

/** Up to the first list: whoever changes lists on both sides has changed the same entry. */
const entryOf = (path: Path): Path => {
  const list = path.findIndex((step) => typeof step === 'number')
  return list === -1 ? path : path.slice(0, list)
}

/** Which entries both sides have changed, each in another way. */
function clashing(
  entries: readonly Path[],
  from: unknown,
  to: unknown,
  now: unknown,
): readonly Path[] {
  const found = entries.filter(
    (entry) =>
      !same(valueAt(from, entry), valueAt(now, entry)) &&
      !same(valueAt(to, entry), valueAt(now, entry)),
  )
  return [...new Map(found.map((path) => [path.join('.'), path])).values()]
}

/**
 * Answers put into a file that somebody else has changed meanwhile. What only one side has changed
 * is kept from there; what both have changed, or the file cannot take, stays as it is in the file
 * and is told.
 * @param base The text that both have started from.
 * @param mine The answers.
 * @param theirs What the file says now.
 */
export function merged(
  base: string,
  mine: string,
  theirs: string,
): { readonly draft: Draft; readonly clashes: readonly Clash[] } {
  const [from, to, now] = [draftOf(base).data, draftOf(mine).data, draftOf(theirs)]
  const own = changesBetween(from, to)
  const paths = [
    ...clashing(
      own.map(({ path }) => entryOf(path)),
      from,
      to,
      now.data,
    ),
  ]
  let draft = now
  for (const change of own) {
    const entry = entryOf(change.path)
    if (!same(valueAt(from, entry), valueAt(now.data, entry))) continue
    const made = answered(draft, [change], '')
    if (made.ok) draft = made.draft
    else paths.push(change.path)
  }
  const clashes = paths.map((path) => ({
    path,
    mine: valueAt(to, path),
    theirs: valueAt(now.data, path),
  }))
  return { draft, clashes }
}

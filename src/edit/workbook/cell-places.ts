import type { Place } from '../../model/problem.ts'
import type { Path } from '../../read/read-yaml.ts'
import type { Found } from './found.ts'
import type { Asked } from './merge.ts'
import { placeKey } from './taken-tree.ts'

/** Numbers of what is taken out of a list, by the path of the list. */
function takenOut(asked: readonly Asked[]): ReadonlyMap<string, readonly number[]> {
  const out = new Map<string, readonly number[]>()
  for (const { path, value } of asked) {
    const last = path.at(-1)
    if (value !== undefined || typeof last !== 'number') continue
    const list = placeKey(path.slice(0, -1))
    out.set(list, [...(out.get(list) ?? []), last])
  }
  return out
}

/** A path as it is when everything is taken out that goes. */
const moved = (path: Path, out: ReadonlyMap<string, readonly number[]>): Path =>
  path.map((step, i) =>
    typeof step === 'number'
      ? step - (out.get(placeKey(path.slice(0, i))) ?? []).filter((n) => n < step).length
      : step,
  )

/** Places of everything that is asked for, down to single values of a new line. */
export function placesOf(found: Found, asked: readonly Asked[]): ReadonlyMap<string, Place> {
  const out = takenOut(asked)
  const places = new Map<string, Place>()
  const rows = found.lists.flatMap(({ subject, rows: all }) => all.map((row) => ({ subject, row })))
  for (const { path, value, place } of asked) {
    if (value === undefined) continue
    const at = moved(path, out)
    places.set(placeKey(at), place)
    const line = rows.find(({ row }) => row.place === place)
    for (const one of line?.row.values.values() ?? [])
      if (one.value !== undefined)
        places.set(placeKey([...at, ...one.field.path.slice(line?.subject.at.length)]), one.place)
  }
  return places
}

/** Places of empty cells, by what could stand in them. */
export function emptyOf(found: Found, asked: readonly Asked[]): ReadonlyMap<string, Place> {
  const out = takenOut(asked)
  const lines = found.lists.flatMap(({ subject, rows }) =>
    asked.flatMap(({ path, place }) =>
      rows
        .filter((row) => row.place === place)
        .flatMap((row) => [...row.values.values()])
        .filter((one) => one.value === undefined)
        .map(
          (one) =>
            [
              placeKey([...moved(path, out), ...one.field.path.slice(subject.at.length)]),
              one.place,
            ] as const,
        ),
    ),
  )
  const values = found.values
    .filter((one) => one.value === undefined)
    .map((one) => [placeKey(one.field.path), one.place] as const)
  // What somebody has cleared of a line that is there.
  const cleared = asked
    .filter(({ path, value }) => value === undefined && typeof path.at(-1) !== 'number')
    .map(({ path, place }) => [placeKey(moved(path, out)), place] as const)
  return new Map([...values, ...cleared, ...lines])
}

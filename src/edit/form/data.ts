import type { Path } from '../../read/read-yaml.ts'

type Group = Readonly<Record<string | number, unknown>>

/** What stands at a path of data; undefined where nothing does, or only a name with nothing behind it. */
export function valueAt(data: unknown, path: Path): unknown {
  const found = path.reduce<unknown>(
    (at, step) =>
      typeof at === 'object' && at !== null && Object.hasOwn(at, step)
        ? (at as Group)[step]
        : undefined,
    data,
  )
  return found === null ? undefined : found
}

/** A list of groups; empty where there is none. */
export function groupsAt(data: unknown, path: Path): readonly Group[] {
  const found = valueAt(data, path)
  if (!Array.isArray(found)) return []
  return found.map((group: unknown) =>
    typeof group === 'object' && group !== null ? (group as Group) : {},
  )
}

/** A text that stands at a path. */
export function textAt(data: unknown, path: Path): string | undefined {
  const found = valueAt(data, path)
  return typeof found === 'string' || typeof found === 'number' ? String(found) : undefined
}

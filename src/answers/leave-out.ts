import type { Path } from '../read/read-yaml.ts'

/** What is left of some data, and where it stood before. */
type Left = {
  readonly data: unknown
  /** The path before entries of lists were left out. */
  readonly before: (path: Path) => Path
}

type Group = Readonly<Record<string | number, unknown>>

const isGroup = (x: unknown): x is Group => typeof x === 'object' && x !== null

/** A path as one text that no other path has: keys may hold dots. */
export const keyOf = (path: Path): string => JSON.stringify(path)

/**
 * Data without some entries.
 * @param out Paths (`keyOf`) of what is left out, as they are before anything is.
 */
export function leaveOut(data: unknown, out: ReadonlySet<string>): Left {
  // Of each list, which of its entries are still there.
  const kept = new WeakMap<object, readonly number[]>()
  const left = (value: unknown, path: Path): unknown => {
    if (!isGroup(value)) return value
    if (Array.isArray(value)) {
      const indices = value.map((_, i) => i).filter((i) => !out.has(keyOf([...path, i])))
      const list = indices.map((i) => left(value[i], [...path, i]))
      kept.set(list, indices)
      return list
    }
    return Object.fromEntries(
      Object.entries(value)
        .filter(([key]) => !out.has(keyOf([...path, key])))
        .map(([key, inner]) => [key, left(inner, [...path, key])]),
    )
  }
  const all = out.has(keyOf([])) ? {} : left(data, [])
  const before = (path: Path): Path => {
    let at: unknown = all
    return path.map((step) => {
      const was = isGroup(at) ? kept.get(at)?.[Number(step)] : undefined
      at = isGroup(at) ? at[step] : undefined
      return was ?? step
    })
  }
  return { data: all, before }
}

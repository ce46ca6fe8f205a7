import type { Path, SourceTree } from './read-yaml.ts'

/** A text of one tree and the text of another tree that stands in its place. */
export type Replacement = { readonly path: Path; readonly text: string; readonly from: Path }

const nameOf = (path: Path): string => JSON.stringify(path)

function replaced(value: unknown, path: Path, by: ReadonlyMap<string, Replacement>): unknown {
  if (Array.isArray(value)) return value.map((v: unknown, i) => replaced(v, [...path, i], by))
  if (typeof value === 'object' && value !== null)
    return Object.fromEntries(
      Object.entries(value).map(([key, v]) => [key, replaced(v, [...path, key], by)]),
    )
  return by.get(nameOf(path))?.text ?? value
}

/**
 * A tree with some of its texts taken from another one. Such a text is placed where the other file
 * has it, everything else where it was.
 */
export function withTexts(
  base: SourceTree,
  other: SourceTree,
  replacements: readonly Replacement[],
): SourceTree {
  const by = new Map(replacements.map((r) => [nameOf(r.path), r]))
  const at = (path: Path): readonly [SourceTree, Path] => {
    const from = by.get(nameOf(path))?.from
    return from ? [other, from] : [base, path]
  }
  return {
    file: base.file,
    data: replaced(base.data, [], by),
    placeOf: (path) => {
      const [tree, there] = at(path)
      return tree.placeOf(there)
    },
    keyPlaceOf: (path) => {
      const [tree, there] = at(path)
      return tree.keyPlaceOf(there)
    },
    textPlaceOf: (path, part) => {
      const [tree, there] = at(path)
      return tree.textPlaceOf(there, part)
    },
    lineAt: (place) => (place.file === other.file.path ? other : base).lineAt(place),
    problem: (place, ...what) =>
      (place.file === other.file.path ? other : base).problem(place, ...what),
  }
}

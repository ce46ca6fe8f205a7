import type { Problem } from '../../model/problem.ts'
import { type Found, rowOf } from './found.ts'
import type { Grid } from './grid.ts'

/** How many lines of a sheet were read, and in how many something does not fit. */
export type Counted = { readonly name: string; readonly read: number; readonly not: number }

/** Lines of what was read that hold something. */
const linesOf = (found: Found): ReadonlySet<string> =>
  new Set([
    ...found.values.filter((one) => one.value !== undefined).map((one) => rowOf(one.place)),
    ...found.lists.flatMap((list) => list.rows.map((row) => rowOf(row.place))),
    ...found.tables.flatMap(({ file, texts, place }) =>
      texts.slice(1).map((_, i) => `${file.path}#${place.cell?.sheet ?? ''}#table ${i}`),
    ),
  ])

/** How much of each sheet was read. */
export function countedOf(
  grids: readonly { readonly grid: Grid; readonly found: Found }[],
  problems: readonly Problem[],
): readonly Counted[] {
  return grids.flatMap(({ grid, found }) => {
    const wrong = new Set(
      problems
        .filter(
          (p) =>
            p.severity === 'error' &&
            p.place.file === grid.file.path &&
            (p.place.cell?.sheet ?? grid.name).trim() === grid.name,
        )
        .map((p) => rowOf(p.place)),
    )
    const lines = linesOf(found)
    const sound =
      found.tables.length > 0
        ? lines.size - wrong.size
        : [...lines].filter((line) => !wrong.has(line)).length
    return lines.size + wrong.size === 0
      ? []
      : [{ name: grid.name, read: Math.max(0, sound), not: wrong.size }]
  })
}

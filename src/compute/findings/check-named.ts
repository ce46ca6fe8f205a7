import { didYouMean } from '../../model/closest.ts'
import type { Problem } from '../../model/problem.ts'
import type { Sourced } from '../../validate/check-library.ts'
import type { Belongs, Schedule } from '../../validate/schemas/plans.ts'
import { findingRules } from './rules.ts'

type Path = readonly (string | number)[]

/** Rows and jobs of a plan, each with where it stands in it. */
const itemsIn = ({ work, tables }: Schedule): readonly { item: Belongs; path: Path }[] => [
  ...(work?.jobs ?? []).map((item, i) => ({ item, path: ['work', 'jobs', i] })),
  ...tables.flatMap((t, ti) =>
    (t.rows ?? []).map((item, i) => ({ item, path: ['tables', ti, 'rows', i] })),
  ),
]

/** A row or job of a plan that waits for a finding which no rule makes would never be read. */
export function findingsNamed(schedules: readonly Sourced<Schedule>[]): Problem[] {
  const ids = findingRules.map((r) => r.id)
  return schedules.flatMap(({ value, tree, path }) =>
    itemsIn(value).flatMap((at) =>
      (['finding', 'no-finding'] as const).flatMap((key) =>
        (at.item[key] ?? []).flatMap((name, i) =>
          ids.includes(name)
            ? []
            : [
                tree.problem(
                  tree.placeOf([...path, ...at.path, key, i]),
                  'ref/missing',
                  `there is no finding "${name}"`,
                  { hint: didYouMean(name, ids) ?? 'findings stand in content/findings.yaml' },
                ),
              ],
        ),
      ),
    ),
  )
}

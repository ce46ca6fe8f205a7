import type { Problem } from '../model/problem.ts'
import type { Path } from '../read/read-yaml.ts'
import type { Library, Sourced } from './check-library.ts'
import { checkRef, type Names, names } from './library-references.ts'
import type { Belongs, Schedule } from './schemas/plans.ts'

/** Findings that a row or a job waits for. */
const findingRefs = (
  item: Sourced<Schedule>,
  path: Path,
  belongs: Belongs,
  findings: Names,
): Problem[] =>
  (['finding', 'no-finding'] as const).flatMap((entry) =>
    (belongs[entry] ?? []).flatMap((id, i) => checkRef(item, [...path, entry, i], id, findings)),
  )

const planRefs = (item: Sourced<Schedule>, findings: Names): Problem[] => [
  ...item.value.tables.flatMap((table, t) =>
    (table.rows ?? []).flatMap((row, r) =>
      findingRefs(item, ['tables', t, 'rows', r], row, findings),
    ),
  ),
  ...(item.value.work?.jobs ?? []).flatMap((job, j) => [
    ...findingRefs(item, ['work', 'jobs', j], job, findings),
    ...checkRef(item, ['work', 'jobs', j, 'by'], job.by, {
      what: 'person under “people”',
      ids: new Set(item.value.work?.people),
    }),
  ]),
]

/** What plans name and nobody has: a row that waits for it would never be printed. */
export function planReferences({
  schedules,
  findings,
}: Pick<Library, 'schedules' | 'findings'>): Problem[] {
  const known = names('finding', findings)
  return schedules.flatMap((item) => planRefs(item, known))
}

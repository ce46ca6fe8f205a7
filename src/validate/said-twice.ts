import type { Problem } from '../model/problem.ts'
import type { Path } from '../read/read-yaml.ts'
import type { Sourced } from './check-library.ts'
import type { Procedure } from './schemas/procedure.ts'

/** Cautions that a procedure names more than once, each at the place where it is named again. */
export function saidTwice({
  tree,
  path,
  value,
}: Pick<Sourced<Procedure>, 'tree' | 'path' | 'value'>): readonly Problem[] {
  const named: readonly { readonly id: string; readonly at: Path }[] = [
    ...value.cautions.map((id, i) => ({ id, at: ['cautions', i] })),
    ...value.methods.flatMap((m, i) =>
      m.steps.flatMap((s, j) =>
        (s.cautions ?? []).map((id, k) => ({
          id,
          at: ['methods', i, 'steps', j, 'cautions', k],
        })),
      ),
    ),
  ]
  const met = new Set<string>()
  return named.flatMap(({ id, at }) => {
    if (!met.has(id)) {
      met.add(id)
      return []
    }
    return [
      tree.problem(
        tree.placeOf([...path, ...at]),
        'ref/twice',
        `the caution "${id}" stands in this procedure already`,
        { hint: 'a hazard of more than one step belongs into the list at the head, once' },
      ),
    ]
  })
}

import { didYouMeanOneOf } from '../model/closest.ts'
import type { Problem } from '../model/problem.ts'
import type { Library } from './check-library.ts'
import { groupsOf } from './schema-advice/schema-keys.ts'
import { facility } from './schemas/facility.ts'

/** Every entry that a facility file may have, with dots; lists without a number. */
const entries = (): readonly string[] =>
  groupsOf(facility).flatMap(({ path, keys }) => keys.map((key) => [...path, key].join('.')))

/** Findings that belong to an entry that there is none of: nobody could answer them. */
export function findingReferences({ findings }: Pick<Library, 'findings'>): Problem[] {
  const known = entries()
  return findings.flatMap(({ value: { ask }, tree, path }) =>
    known.includes(ask)
      ? []
      : [
          tree.problem(
            tree.placeOf([...path, 'ask']),
            'ref/missing',
            `a facility file has no entry "${ask}"`,
            { hint: didYouMeanOneOf(ask, known) },
          ),
        ],
  )
}

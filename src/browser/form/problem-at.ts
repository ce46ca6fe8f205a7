import { worded } from '../../edit/form/understood.ts'
import type { Problem } from '../../model/problem.ts'
import type { Path } from '../../read/read-yaml.ts'
import type { Sitting } from './sitting.ts'

/** A problem with the entry that it is about. */
export type Placed = Problem & { readonly path?: Path }

/** What is wrong with an entry as the whole file sees it, in plain words. */
export function problemAt(sitting: Sitting, at: Path): string | undefined {
  const problems = (sitting.worked()?.problems ?? []) as readonly Placed[]
  const found = problems.find(({ path }) => path?.join('.') === at.join('.'))
  return found && worded(found.message, found.hint)
}

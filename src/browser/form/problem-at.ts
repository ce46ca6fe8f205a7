import { worded } from '../../edit/form/understood.ts'
import type { Path } from '../../read/read-yaml.ts'
import type { Sitting } from './sitting.ts'

/** What is wrong with an entry as the whole file sees it, in plain words. */
export function problemAt(sitting: Sitting, at: Path): string | undefined {
  const problems = sitting.worked()?.problems ?? []
  const found = problems.find(({ path }) => path?.join('.') === at.join('.'))
  return found && worded(found.message, found.hint)
}

import type { Shown } from '../../../../src/browser/form/live/worked.ts'
import { workHere } from '../../../answers/support/work.ts'

const work = await workHere()

/** What files make, as the panel shows it. */
export function shownOf(files: ReadonlyMap<string, string>): Shown {
  const { facility, computed, manual, ...rest } = work(files)
  if (!facility || !computed || !manual) throw new Error('there is always something to show')
  return { facility, computed, manual, ...rest }
}

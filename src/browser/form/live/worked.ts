import type { Computed } from '../../../compute/compute-facility.ts'
import type { Manual } from '../../../model/manual.ts'
import type { Problem } from '../../../model/problem.ts'
import type { Facility } from '../../../validate/check-facility.ts'
import type { Library } from '../../../validate/check-library.ts'

/** What the panel shows: all that the answers make. */
export type Shown = {
  readonly facility: Facility
  readonly computed: Computed
  readonly manual: Manual
  readonly library: Library
  readonly problems: readonly Problem[]
  readonly leftOut: readonly string[]
  readonly standIns: readonly string[]
}

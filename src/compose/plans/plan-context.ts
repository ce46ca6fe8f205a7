import type { Computed } from '../../compute/compute-facility.ts'
import type { Engine } from '../../compute/engine/engine.ts'
import { isQuantityId } from '../../compute/uses/ids.ts'
import { formatQuantity } from '../../model/quantity/format-quantity.ts'
import type { KindName } from '../../model/quantity/kinds.ts'
import type { Facility } from '../../validate/check-facility.ts'
import type { Plan } from '../../validate/schemas/plans.ts'
import type { Words } from '../../validate/schemas/words.ts'
import type { Circumstances } from '../applies.ts'

/** What a plan is composed with. */
export type PlanContext = {
  readonly facility: Facility
  readonly computed: Computed
  readonly here: Circumstances
  readonly words: Words
  readonly plans: readonly Plan[]
  /** The symptom finder on one page: said, first check, where to go. */
  readonly symptomRows: readonly (readonly string[])[]
}

/** A figure or fact in SI; undefined where it has no value here. */
export const numberOf = (engine: Engine, name: string): number | undefined =>
  isQuantityId(name) ? engine.si(name) : undefined

/** A figure or fact as printed; undefined where it has no value here. */
export const textOf = (engine: Engine, name: string): string | undefined =>
  isQuantityId(name) ? engine.text(name) : undefined

/** An SI value as the manual prints it. */
export const printed = (si: number, kind: KindName, { computed }: PlanContext): string =>
  formatQuantity(si, kind, computed.locale).text

import type { Computed } from '../../compute/compute-facility.ts'
import type { Engine } from '../../compute/engine.ts'
import { formatQuantity } from '../../model/quantity/format-quantity.ts'
import type { KindName } from '../../model/quantity/kinds.ts'
import type { Facility } from '../../validate/check-facility.ts'
import type { Plan } from '../../validate/schemas/plans.ts'
import type { Circumstances } from '../applies.ts'

/** What a plan is composed with. */
export type PlanContext = {
  readonly facility: Facility
  readonly computed: Computed
  readonly here: Circumstances /** Fixed words of plans. */
  readonly words: Readonly<
    Record<string, string>
  > /** Plain meanings of soil groups, and how textures feel. */
  readonly soils: {
    readonly groups: Readonly<Record<string, string>>
    readonly feel: Readonly<Record<string, string>>
  }
  readonly plans: readonly Plan[] /** The symptom finder on one page: said, first check, where to go. */
  readonly symptomRows: readonly (readonly string[])[]
}

/** A figure or fact in SI; undefined where it has no value here. */
export function numberOf(engine: Engine, name: string): number | undefined {
  const figure = engine.figure(name)
  if (figure) return figure.value.ok ? figure.value.si : undefined
  return engine.facts.get(name)?.si
}

/** A figure or fact as printed; undefined where it has no value here. */
export function textOf(engine: Engine, name: string): string | undefined {
  const figure = engine.figure(name)
  if (figure) return figure.value.ok ? figure.value.text : undefined
  return engine.facts.get(name)?.text
}

/** An SI value as the manual prints it. */
export const printed = (si: number, kind: KindName, { computed }: PlanContext): string =>
  formatQuantity(si, kind, computed.locale).text

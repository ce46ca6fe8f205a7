import type { UnitSystem } from '../model/quantity/kinds.ts'
import type { When } from '../validate/schemas/when.ts'

/** What a facility is, as far as the applicability of content goes. */
export type Circumstances = {
  readonly surface: string
  readonly rail: string
  readonly units: UnitSystem
  readonly capabilities: ReadonlySet<string>
  /** A figure or fact that a condition names, SI; undefined where it has no value here. */
  readonly si: (name: string) => number | undefined
}

const listed = <T>(value: T | readonly T[] | undefined): readonly T[] =>
  value === undefined ? [] : Array.isArray(value) ? value : [value as T]

/** What is smaller than this is nought, in any unit. */
const least = 1e-9

/** Whether content with this condition belongs in the manual of a facility. */
export function applies(when: When | undefined, here: Circumstances): boolean {
  if (!when) return true
  const one = (wanted: readonly string[], is: string): boolean =>
    wanted.length === 0 || wanted.includes(is)
  const any = listed(when.any)
  return (
    one(listed(when.surface), here.surface) &&
    one(listed(when.rail), here.rail) &&
    (when.units === undefined || when.units === here.units) &&
    listed(when.has).every((c) => here.capabilities.has(c)) &&
    !listed(when.lacks).some((c) => here.capabilities.has(c)) &&
    listed(when['above-zero']).every((name) => (here.si(name) ?? 0) > least) &&
    listed(when.zero).every((name) => Math.abs(here.si(name) ?? 1) <= least) &&
    (any.length === 0 || any.some((c) => here.capabilities.has(c)))
  )
}

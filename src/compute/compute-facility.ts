import { type Capability, capabilities } from '../model/capability.ts'
import type { Locale } from '../model/quantity/format-quantity.ts'
import type { Facility } from '../validate/check-facility.ts'
import { createEngine, type Engine } from './engine.ts'
import { buildFacts } from './facts/build-facts.ts'
import { collectKnown, machineFor } from './facts/collect.ts'
import { planUses } from './plan/plan.ts'

export type Computed = { readonly engine: Engine; readonly locale: Locale; readonly capabilities: ReadonlySet<Capability> }

/** From a checked facility to an engine that answers for it. Nothing is computed before it is asked for. */
export function computeFacility(facility: Facility): Computed {
  const { file, tree } = facility
  const locale: Locale = { system: file.units, currency: file.currency ?? (file.units === 'us' ? 'USD' : 'EUR') }
  const here = new Set(capabilities.filter((c) => machineFor(file, c) !== undefined))
  const facts = buildFacts(collectKnown(file, tree, here), here, file.cushion.material, locale)
  return { engine: createEngine(planUses(new Set(facts.keys()), locale.system), facts, locale), locale, capabilities: here }
}

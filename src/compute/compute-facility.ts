import { type Capability, capabilities } from '../model/capability.ts'
import { kindOfFact } from '../model/fact-spec.ts'
import type { FactWords } from '../model/fact-words.ts'
import type { Locale, UnitWords } from '../model/quantity/format-quantity.ts'
import type { WorksheetWords } from '../model/worksheet-words.ts'
import type { Facility } from '../validate/check-facility.ts'
import { createEngine, type Engine } from './engine/engine.ts'
import { buildFacts } from './facts/build-facts.ts'
import { collectKnown, machineFor } from './facts/collect.ts'
import { latestDay } from './survey/latest-day.ts'
import { allUses } from './uses/all-uses.ts'
import type { Readings } from './uses/readings.ts'

/** What facts and worksheets say. */
export type ComputeWords = {
  readonly facts: FactWords
  readonly worksheets: WorksheetWords
  /** For units that are written out; the symbols of the library where it is left out. */
  readonly units?: UnitWords | undefined
}

export type Computed = {
  readonly engine: Engine
  readonly locale: Locale
  readonly capabilities: ReadonlySet<Capability>
  /** Paths of the facts that there are here, with what is no quantity but decides. */
  readonly known: ReadonlySet<string>
  readonly data: Readings
  readonly words: ComputeWords
}

/**
 * From a checked facility to an engine that answers for it. Nothing is computed before it is asked
 * for.
 */
export function computeFacility(facility: Facility, words: ComputeWords): Computed {
  const { file, tests, imported } = facility
  const { surveys } = imported
  const weather = imported.weather[0] ?? []
  const locale: Locale = {
    system: file.units,
    currency: file.currency ?? (file.units === 'us' ? 'USD' : 'EUR'),
    ...(words.units && { unitWords: words.units }),
  }
  const here = new Set(capabilities.filter((c) => machineFor(file, c) !== undefined))
  const facts = buildFacts(
    collectKnown(facility, here),
    here,
    file.cushion.material,
    locale,
    words.facts,
  )
  const data: Readings = {
    depths: latestDay(surveys, 'cushion-depth'),
    levels: latestDay(surveys, 'surface-level'),
    weather: weather.length > 0 ? weather : undefined,
    sieve: tests.sieves.at(-1),
    densities: tests.densities.length > 0 ? tests.densities : undefined,
  }
  // Lights are no quantity, but what is planned after dark depends on them.
  const known = new Set<string>([...facts.keys(), ...(file.lights === true ? ['lights'] : [])])
  const uses = allUses(known, locale.system, data)
  return {
    engine: createEngine(uses, facts, locale, words.worksheets, kindOfFact),
    locale,
    capabilities: here,
    known,
    data,
    words,
  }
}

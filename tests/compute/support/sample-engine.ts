import { createEngine, type Engine } from '../../../src/compute/engine/engine.ts'
import { buildFacts } from '../../../src/compute/facts/build-facts.ts'
import type { KnownValue } from '../../../src/compute/facts/known.ts'
import { cushionUses } from '../../../src/compute/uses/cushion.ts'
import { drainageUses } from '../../../src/compute/uses/drainage.ts'
import { moneyUses } from '../../../src/compute/uses/money.ts'
import { ovalUses } from '../../../src/compute/uses/oval.ts'
import { pullbackUses } from '../../../src/compute/uses/pullback.ts'
import { repairUses } from '../../../src/compute/uses/repairs.ts'
import { sealingUses } from '../../../src/compute/uses/sealing.ts'
import type { Use } from '../../../src/compute/uses/use.ts'
import { workingUses } from '../../../src/compute/uses/working.ts'
import { type Capability, capabilities } from '../../../src/model/capability.ts'
import type { UnitSystem } from '../../../src/model/quantity/kinds.ts'
import { parseQuantity } from '../../../src/model/quantity/parse-quantity.ts'
import { libraryWords } from '../../support/worksheet-words.ts'

const subjects = [
  ovalUses,
  cushionUses,
  workingUses,
  pullbackUses,
  sealingUses,
  repairUses,
  moneyUses,
  drainageUses,
]

/** A half mile with everything a facility may own and know. */
export const everything: Readonly<Record<string, string>> = {
  'oval.lap': '2,640 ft',
  'oval.straight': '600 ft',
  'cushion.depth.found': '1 1/2 in',
  'cushion.grit.found': '20 %',
  'prices.material': '$18/ton',
  'gear.roll-tires.count': '2',
  'rail-ridge.height': '1 in',
}

function stated(text: string): KnownValue {
  const read = parseQuantity(text, { plain: true })
  if (!read.ok) throw new RangeError(read.fault.message)
  return {
    si: read.quantity.si,
    provenance: { kind: 'stated', at: { file: 'facility.yaml', line: 1, column: 1, length: 1 } },
  }
}

export type Sample = { readonly engine: Engine; readonly uses: readonly Use[] }

/** An engine over the earth-side uses alone, for a half mile of stone dust. */
export function sampleEngine(
  known: Readonly<Record<string, string>> = everything,
  can: readonly Capability[] = capabilities,
  system: UnitSystem = 'us',
): Sample {
  const locale = { system, currency: 'USD' }
  const values = new Map(Object.entries(known).map(([path, text]) => [path, stated(text)]))
  const facts = buildFacts(values, new Set(can), 'stone-dust', locale, libraryWords.facts)
  const uses = subjects.flatMap((uses) => [...uses(new Set(facts.keys()), system)])
  return { engine: createEngine(uses, facts, locale, libraryWords.worksheets), uses }
}

import {
  capabilityOf,
  type FactPath,
  type FactSpec,
  factPaths,
  factSpec,
  type Typical,
} from '../../model/fact-spec.ts'
import type { FactWords } from '../../model/fact-words.ts'
import type { Fact, Provenance } from '../../model/figure.ts'
import type { Material } from '../../model/oval-choices.ts'
import { formatExact } from '../../model/quantity/format-exact.ts'
import type { Locale } from '../../model/quantity/format-quantity.ts'
import { usualValue } from '../../model/usual-value.ts'
import type { KnownValue, KnownValues } from './known.ts'

function typicalValue(typical: Typical, note: string, locale: Locale): KnownValue {
  const { basis, sources } = typical
  const kind = basis === 'rule' || basis === 'choice' ? basis : 'typical'
  const provenance: Provenance = { kind, sources, note }
  return { si: usualValue(typical, locale.system), provenance }
}

const toFact = (
  path: FactPath,
  spec: FactSpec,
  known: KnownValue,
  locale: Locale,
  words: FactWords,
): Fact => ({
  path,
  label: words.label(path),
  kind: spec.kind,
  si: known.si,
  text: formatExact(known.si, spec.kind, locale),
  provenance: known.provenance,
  howTo: words.howTo(path),
})

/**
 * All facts of a facility: what it gives, and for the rest the sourced typical values. Machine
 * facts exist only for what some machine here can do.
 * @param known What the facility file says, by fact path.
 * @param capabilities What the machines here can do.
 */
export function buildFacts(
  known: KnownValues,
  capabilities: ReadonlySet<string>,
  material: Material,
  locale: Locale,
  words: FactWords,
): ReadonlyMap<FactPath, Fact> {
  const facts = new Map<FactPath, Fact>()
  for (const path of factPaths) {
    const spec = factSpec(path)
    const capability = capabilityOf(path)
    if (!spec || (capability && !capabilities.has(capability))) continue
    const typical = spec.typical(material)
    const value =
      known.get(path) ?? (typical && typicalValue(typical, words.why(path, material), locale))
    if (value) facts.set(path, toFact(path, spec, value, locale, words))
  }
  return facts
}

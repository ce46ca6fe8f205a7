import { createEngine, type Engine } from '../../compute/engine/engine.ts'
import { factUses } from '../../compute/uses/all-uses.ts'
import type { Fact, Provenance } from '../../model/figure.ts'
import type { Sums } from '../../model/manual/today.ts'
import type { Locale } from '../../model/quantity/format-quantity.ts'
import type { WorksheetWords } from '../../model/worksheet-words.ts'

/** Pages meet names as plain text; one that is not known leads nowhere. */
export type DayEngine = Engine<string, string, string>

export const localeOf = ({ system, currency, unitWords }: Sums): Locale => ({
  system,
  currency,
  ...(unitWords && { unitWords }),
})

const usual: Provenance = { kind: 'typical', sources: [], note: '' }
const told: Provenance = { kind: 'choice', sources: [], note: '' }

/** What a page does not say of its numbers it need not know. */
const wordsOf = ({ calculations, noNumber }: Sums['words']): WorksheetWords => ({
  calculations: Object.fromEntries(
    Object.entries(calculations).map(([id, [inputs, refusals]]) => [
      id,
      { title: '', about: '', inputs, outputs: {}, refusals },
    ]),
  ),
  worksheets: {},
  reasons: {},
  noNumber,
})

/**
 * The engine of the facility, as the program itself makes it, from what the pages carry; without the
 * figures that rest on surveys and records, which no day changes.
 */
export function dayEngine(sums: Sums): DayEngine {
  const facts = new Map(
    sums.facts.map(([path, kind, si, typical]): [string, Fact<string>] => {
      const provenance = typical ? usual : told
      return [path, { path, label: path, kind, si, text: '', provenance, howTo: '' }]
    }),
  )
  const without = new Set(sums.without)
  const uses = factUses(new Set([...facts.keys(), ...sums.known]), sums.system).filter(
    ({ id }) => !without.has(id),
  )
  return createEngine<string, string, string>(
    uses,
    facts,
    localeOf(sums),
    wordsOf(sums.words),
    (path) => sums.supposed[path],
  )
}

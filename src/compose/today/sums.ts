import { worksheetWords } from '../../compute/uses/worksheet-words.ts'
import { type FactPath, kindOfFact } from '../../model/fact-spec.ts'
import { isEstimated } from '../../model/figure.ts'
import type { Sums } from '../../model/manual/today.ts'
import { type Counted, counted } from '../../model/worksheet-words.ts'
import { type ComposeContext, itemsOf } from '../context.ts'
import { usesOfFacts, usesOfReadings, withGivers } from './uses-behind.ts'

/** Pages say what is missing, never how many. */
const forMany = (inputs: Readonly<Record<string, Counted>>): Readonly<Record<string, string>> =>
  Object.fromEntries(Object.entries(inputs).map(([name, words]) => [name, counted(words)]))

/**
 * What a page needs to work every figure out as it is worked out here.
 * @param varied Facts that a reader may put in, whether the facility has them or not.
 */
export function composeSums(varied: readonly FactPath[], context: ComposeContext): Sums {
  const { engine, locale, library, known } = context
  const words = worksheetWords(itemsOf(library.worksheets))
  const behind = withGivers(engine.uses, usesOfFacts(engine.uses, new Set(varied)))
  const spoken = new Set(behind.map(({ calculation }) => calculation.id))
  return {
    system: locale.system,
    currency: locale.currency,
    unitWords: locale.unitWords,
    facts: [...engine.facts.values()].map(({ path, kind, si, provenance }) =>
      isEstimated(provenance) ? [path, kind, si, 1] : [path, kind, si],
    ),
    supposed: Object.fromEntries(
      varied.flatMap((path) => {
        const kind = engine.facts.has(path) ? undefined : kindOfFact(path)
        return kind ? [[path, kind]] : []
      }),
    ),
    without: [...usesOfReadings(engine.uses)],
    known: [...known].filter((name) => !engine.facts.has(name as FactPath)),
    words: {
      calculations: Object.fromEntries(
        Object.entries(words.calculations)
          .filter(([id]) => spoken.has(id))
          .map(([id, { inputs = {}, refusals = {} }]) => [id, [forMany(inputs), refusals]]),
      ),
      noNumber: words.noNumber,
    },
  }
}

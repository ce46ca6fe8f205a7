import { movementOf, unmeasured } from '../../../compute/sensitivity.ts'
import { useIdOf } from '../../../compute/uses/use.ts'
import { capabilityOf } from '../../../model/fact-spec.ts'
import type { Fact } from '../../../model/figure.ts'
import { entryOf } from './entry-of.ts'
import type { Shown } from './worked.ts'

/** Something that nobody has said, and what saying it would make surer. */
export type Missing = {
  readonly entry: string
  readonly label: string
  /** What stands in for it. */
  readonly value: string
  readonly howTo: string
  /** How many figures rest on it, and which moves most. */
  readonly figures: number
  readonly most: string
  /** Sum of the shares by which figures move. */
  readonly movement: number
}

const sentence = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`

function missingOf(fact: Fact, { computed, facility, library }: Shown): Missing | undefined {
  const { engine } = computed
  const { most, figures, movement } = movementOf(engine, fact)
  if (!most) return undefined
  const work = capabilityOf(fact.path)
  const of = work ? `${fact.label}, ${library.words.capabilities[work]}` : fact.label
  return {
    entry: entryOf(fact.path, facility.file),
    label: sentence(of),
    value: fact.text,
    howTo: fact.howTo,
    figures,
    most: `${engine.worksheet(useIdOf(most.figure))?.title ?? ''}, ${engine.figure(most.figure)?.label ?? ''}`,
    movement,
  }
}

/** What stands in for answers of this facility: usual values, and the oval before it is described. */
const guessed = ({ computed, standIns }: Shown): readonly Fact[] => [
  ...unmeasured(computed.engine).filter((f) => !isSetting(f)),
  ...[...computed.engine.facts.values()].filter((f) => standIns.includes(f.path)),
]

/** How the work is done is settled, not found out: usual ways will do. */
const isSetting = ({ path }: Fact): boolean => path.startsWith('practice.')

/**
 * What nobody has said, by what it would make surer. Each value takes some milliseconds, so this is
 * worked out one at a time: whoever reads waits for none of it.
 */
export function* missingOneByOne(
  shown: Shown,
): Generator<undefined, readonly Missing[], undefined> {
  const found: Missing[] = []
  for (const fact of guessed(shown)) {
    const missing = missingOf(fact, shown)
    if (missing) found.push(missing)
    yield
  }
  return found.sort((a, b) => b.movement - a.movement || a.entry.localeCompare(b.entry, 'en'))
}

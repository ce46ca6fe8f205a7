import table from '../../shared/entries.json' with { type: 'json' }
import { type FactSpec, factSpec, gearSpec } from './fact-spec.ts'
import { kindWords } from './quantity/kind-words.ts'
import type { UnitSystem } from './quantity/kinds.ts'
import { parseQuantity } from './quantity/parse-quantity.ts'

/** What an entry of the facility file is, for whoever fills it in. */
export type EntryAbout = {
  readonly label: string
  /** How to measure it, or what to write. */
  readonly howTo: string | undefined
  /** A value as it is typed. */
  readonly example: string | undefined
}

const entries = new Map<string, { label: string; howTo?: string; example?: string }>(
  Object.entries(table.entries),
)

/** The examples of entries that state no quantity, by path. */
export const entryExamples = (): readonly { readonly path: string; readonly example: string }[] =>
  [...entries].flatMap(([path, { example }]) => (example === undefined ? [] : [{ path, example }]))

/** The fact whose quantity stands at a path; in lists a fact has a name of its own. */
export function factAt(path: readonly string[]): FactSpec | undefined {
  const whole = factSpec(path.join('.'))
  if (whole) return whole
  if (path[0] === 'equipment' && path.length === 2) return gearSpec(path[1] ?? '')
  const last = path.at(-1) ?? ''
  const above = path.slice(0, -1).toReversed()
  if (last === 'station') return factSpec('mark.station')
  return above.map((name) => factSpec(`${name.replace(/s$/, '')}.${last}`)).find((f) => f)
}

const si = (text: string): number => {
  const read = parseQuantity(text, { plain: true })
  return read.ok ? read.quantity.si : Number.NaN
}

/** An example of its kind, where that can be true of the fact. */
function exampleOf({ kind, range: [low, high] }: FactSpec): string {
  const { example } = kindWords(kind)
  return si(example) >= si(low) && si(example) <= si(high) ? example : high
}

/**
 * What is known of the entry at a path; lists are passed without a number.
 * @param system Units of the example.
 */
export function entryAbout(
  path: readonly string[],
  system: UnitSystem = 'us',
): EntryAbout | undefined {
  const plain = entries.get(path.join('.'))
  if (plain) return { label: plain.label, howTo: plain.howTo, example: plain.example }
  const fact = factAt(path)
  if (!fact) return undefined
  const usual = fact.typical('stone-dust')?.[system]
  const example = usual ?? fact.example?.[system] ?? exampleOf(fact)
  return { label: fact.label, howTo: fact.howTo, example }
}

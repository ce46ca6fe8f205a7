import type { Engine } from '../compute/engine/engine.ts'
import { quantityIdOf } from '../compute/uses/ids.ts'
import { isFactPath } from '../model/fact-spec.ts'
import { isEstimated } from '../model/figure.ts'
import type { Manual } from '../model/manual.ts'
import { placeholder } from '../model/placeholders.ts'
import { formatQuantity, type Locale } from '../model/quantity/format-quantity.ts'
import type { KindName } from '../model/quantity/kinds.ts'
import type { Facility } from '../validate/check-facility.ts'
import type { Library, Sourced } from '../validate/check-library.ts'
import type { Circumstances } from './applies.ts'
import type { SourceItem } from './sources.ts'

/** The parts of a manual, each of which has its composer; what they name is added to them. */
export type ManualParts = Omit<Manual, 'quantities'>

/** What a composer has to work with. */
export type ComposeContext = {
  readonly facility: Facility
  readonly engine: Engine
  readonly locale: Locale
  /** Names of the facts that there are, with what is no quantity but decides. */
  readonly known: ReadonlySet<string>
  readonly library: Library
  /** All references there are; the manual prints those that it cites. */
  readonly references: readonly SourceItem[]
  /** Build date, `YYYY-MM-DD`. */
  readonly date: string
  readonly here: Circumstances
  /** Findings that hold on the one race day whose numbers these are; undefined for the whole facility. */
  readonly found?: ReadonlySet<string>
  /** The other parts of the same manual, each composed when it is first asked for. */
  readonly parts: ManualParts
}

/** The items of a list of the library, without where they stand. */
export const itemsOf = <T>(list: readonly Sourced<T>[]): readonly T[] => list.map((i) => i.value)

type Asked = { readonly engine: Engine }

/** A figure or fact that content names, SI; undefined where it has no value here. */
export const namedNumber = (name: string, { engine }: Asked): number | undefined =>
  engine.si(quantityIdOf(name))

/** A figure or fact that content names, as printed; undefined where it has no value here. */
const namedText = (name: string, { engine }: Asked): string | undefined =>
  engine.text(quantityIdOf(name))

/** A text with the numbers of one race day in place of names. */
export const filled = (text: string, asked: Asked): string =>
  text.replace(placeholder, (_, name: string) => namedText(name, asked) ?? '–')

/** Whether a figure or fact that content names has a value here. */
export const isKnown = (name: string, asked: Asked): boolean =>
  namedNumber(name, asked) !== undefined

/** Whether a figure or fact that content names is, or rests on, an estimate. */
export function isEstimate(name: string, { engine }: Asked): boolean {
  const id = quantityIdOf(name)
  if (!isFactPath(id)) return engine.figure(id)?.estimate === true
  const fact = engine.facts.get(id)
  return fact !== undefined && isEstimated(fact.provenance)
}

/** An SI value as the manual prints it. */
export const printed = (
  si: number,
  kind: KindName,
  { locale }: { readonly locale: Locale },
): string => formatQuantity(si, kind, locale).text

import type { Fact, FigureInput } from '../../model/figure.ts'
import { formatExact } from '../../model/quantity/format-exact.ts'
import type { Locale } from '../../model/quantity/format-quantity.ts'
import type { Calculation } from '../calculation.ts'
import type { Binding, Use } from '../uses/use.ts'
import type { Wording } from './wording.ts'

/** Why an input has no value. */
export type Missing = { readonly missing: string }

/** What came of a figure: its value (SI), or why it has none. */
export type Result =
  | { readonly ok: true; readonly si: number }
  | { readonly ok: false; readonly reason: string }

/** What bindings lead to. */
export type Sources = {
  readonly facts: ReadonlyMap<string, Fact<string>>
  readonly resultOf: (figure: string) => Result | undefined
  readonly locale: Locale
  readonly wording: Wording
}

type Value = Pick<FigureInput, 'si' | 'from' | 'provenance' | 'howTo'>

/** An input of a use with its value, before anything of it is put into words. */
export type Bound = { readonly name: string; readonly value: Value }

export const isMissing = (x: Bound | Missing): x is Missing => 'missing' in x

function boundValue(binding: Binding, label: () => string, sources: Sources): Value | Missing {
  if ('fixed' in binding)
    return {
      si: binding.fixed,
      from: '',
      howTo: '',
      provenance: { kind: 'choice', sources: [], note: sources.wording.reason(binding.why) },
    }
  if ('fact' in binding) {
    const known = sources.facts.get(binding.fact)
    if (!known) return { missing: sources.wording.unknown(label()) }
    return { si: known.si, from: known.path, provenance: known.provenance, howTo: known.howTo }
  }
  const result = sources.resultOf(binding.figure)
  if (binding.otherwise && !result?.ok) return boundValue(binding.otherwise, label, sources)
  if (!result) return { missing: sources.wording.unknown(label()) }
  if (!result.ok) return { missing: result.reason }
  return {
    si: result.si,
    from: binding.figure,
    howTo: '',
    provenance: { kind: 'derived', figure: binding.figure },
  }
}

/** The values of all inputs, in the order in which the calculation declares them, or why there is none. */
export const bindInputs = (
  { id, bindings, calculation }: Use<string>,
  sources: Sources,
): readonly (Bound | Missing)[] =>
  Object.keys(calculation.inputs).map((name) => {
    const binding = bindings[name]
    if (!binding) throw new RangeError(`${id} does not bind ${name}`)
    const value = boundValue(binding, () => sources.wording.input(calculation, name), sources)
    return 'missing' in value ? value : { name, value }
  })

/** An input as it is shown. */
export function shownInput(
  { name, value }: Bound,
  calculation: Calculation,
  { locale, wording }: Pick<Sources, 'locale' | 'wording'>,
): FigureInput {
  const spec = calculation.inputs[name]
  if (!spec) throw new RangeError(`${calculation.id} has no input ${name}`)
  const text = formatExact(value.si, spec.kind, locale)
  return {
    name,
    symbol: spec.symbol,
    label: wording.input(calculation, name, text),
    kind: spec.kind,
    text,
    ...value,
  }
}

/** Why the inputs cannot be put into the formula: the first one outside its declared range. */
export function outOfRange(
  calculation: Calculation,
  inputs: readonly Bound[],
  { locale, wording }: Pick<Sources, 'locale' | 'wording'>,
): string | undefined {
  for (const { name, value } of inputs) {
    const spec = calculation.inputs[name]
    if (!spec) continue
    const [low, high] = spec.range
    const slack = 1e-9 * Math.max(Math.abs(low), Math.abs(high) === Infinity ? 1 : Math.abs(high))
    if (value.si >= low - slack && value.si <= high + slack) continue
    const bound = (si: number): string | undefined =>
      Number.isFinite(si) ? formatExact(si, spec.kind, locale) : undefined
    const text = formatExact(value.si, spec.kind, locale)
    return wording.outside(wording.input(calculation, name), text, bound(low), bound(high))
  }
  return undefined
}

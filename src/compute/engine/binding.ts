import type { Fact, Figure, FigureInput } from '../../model/figure.ts'
import { formatExact } from '../../model/quantity/format-exact.ts'
import type { Locale } from '../../model/quantity/format-quantity.ts'
import type { Calculation } from '../calculation.ts'
import type { Binding, Use } from '../uses/use.ts'
import type { Wording } from './wording.ts'

/** Why an input has no value. */
export type Missing = { readonly missing: string }

export const isMissing = (x: FigureInput | Missing): x is Missing => 'missing' in x

/** What bindings lead to. */
export type Sources = {
  readonly facts: ReadonlyMap<string, Fact<string>>
  readonly figureOf: (id: string) => Figure | undefined
  readonly locale: Locale
  readonly wording: Wording
}

type Value = Pick<FigureInput, 'si' | 'from' | 'provenance' | 'howTo'>

function boundValue(binding: Binding, label: string, sources: Sources): Value | Missing {
  if ('fixed' in binding)
    return {
      si: binding.fixed,
      from: '',
      howTo: '',
      provenance: { kind: 'choice', sources: [], note: sources.wording.reason(binding.why) },
    }
  if ('fact' in binding) {
    const known = sources.facts.get(binding.fact)
    if (!known) return { missing: sources.wording.unknown(label) }
    return { si: known.si, from: known.path, provenance: known.provenance, howTo: known.howTo }
  }
  const figure = sources.figureOf(binding.figure)
  if (binding.otherwise && !figure?.value.ok) return boundValue(binding.otherwise, label, sources)
  if (!figure) return { missing: sources.wording.unknown(label) }
  if (!figure.value.ok) return { missing: figure.value.reason }
  return {
    si: figure.value.si,
    from: figure.id,
    howTo: '',
    provenance: { kind: 'derived', figure: figure.id },
  }
}

/** The value of one input of a use, with where it comes from, or why there is none. */
function bindInput(
  name: string,
  binding: Binding,
  calculation: Calculation,
  sources: Sources,
): FigureInput | Missing {
  const spec = calculation.inputs[name]
  if (!spec) throw new RangeError(`${calculation.id} has no input ${name}`)
  const label = sources.wording.input(calculation, name)
  const value = boundValue(binding, label, sources)
  if ('missing' in value) return value
  return {
    name,
    symbol: spec.symbol,
    label,
    kind: spec.kind,
    text: formatExact(value.si, spec.kind, sources.locale),
    ...value,
  }
}

/** All inputs of a use, in the order in which its calculation declares them. */
export const bindInputs = (
  { id, bindings, calculation }: Use<string>,
  sources: Sources,
): readonly (FigureInput | Missing)[] =>
  Object.keys(calculation.inputs).map((name) => {
    const binding = bindings[name]
    if (!binding) throw new RangeError(`${id} does not bind ${name}`)
    return bindInput(name, binding, calculation, sources)
  })

/** Why the inputs cannot be put into the formula: the first one outside its declared range. */
export function outOfRange(
  calculation: Calculation,
  inputs: readonly FigureInput[],
  { locale, wording }: Pick<Sources, 'locale' | 'wording'>,
): string | undefined {
  for (const input of inputs) {
    const spec = calculation.inputs[input.name]
    if (!spec) continue
    const [low, high] = spec.range
    const slack = 1e-9 * Math.max(Math.abs(low), Math.abs(high) === Infinity ? 1 : Math.abs(high))
    if (input.si >= low - slack && input.si <= high + slack) continue
    const bound = (si: number): string | undefined =>
      Number.isFinite(si) ? formatExact(si, spec.kind, locale) : undefined
    return wording.outside(input.label, input.text, bound(low), bound(high))
  }
  return undefined
}

import type { Fact, Figure, FigureInput, Worksheet } from '../model/figure.ts'
import { formatExact } from '../model/quantity/format-exact.ts'
import { formatQuantity, type Locale } from '../model/quantity/format-quantity.ts'
import { type Calculation, isRefusal, type Refusal } from './calculation.ts'
import { formulaLines } from './formula/formula-lines.ts'
import type { Binding, Use } from './uses/use.ts'

/** Answers for one facility: every figure is computed once, when it is first asked for. */
export type Engine = {
  readonly uses: readonly Use[]
  readonly facts: ReadonlyMap<string, Fact>
  readonly hasFigure: (id: string) => boolean
  readonly figure: (id: string) => Figure | undefined
  readonly worksheet: (useId: string) => Worksheet | undefined
  /** Paths of all facts that a figure rests on, directly or not. */
  readonly restsOn: (figureId: string) => ReadonlySet<string>
  /**
   * The same facility with other values (SI) for some facts; what does not rest on them is not
   * computed again.
   */
  readonly vary: (values: ReadonlyMap<string, number>) => Engine
}

type Worked = {
  readonly inputs: readonly FigureInput[]
  readonly figures: readonly Figure[]
  readonly values: Readonly<Record<string, number | Refusal>>
}

const fixedProvenance = (why: string): FigureInput['provenance'] => ({
  kind: 'rule',
  sources: [],
  note: why,
})

/** `grade.time` → `grade`. */
export const useIdOf = (figureId: string): string => figureId.slice(0, figureId.lastIndexOf('.'))

/** Rejects input outside its declared range before the formula sees it. */
function outOfRange(
  calculation: Calculation,
  inputs: readonly FigureInput[],
  locale: Locale,
): string | undefined {
  for (const input of inputs) {
    const spec = calculation.inputs[input.name]
    if (!spec) continue
    const [low, high] = spec.range
    const slack = 1e-9 * Math.max(Math.abs(low), Math.abs(high) === Infinity ? 1 : Math.abs(high))
    if (input.si >= low - slack && input.si <= high + slack) continue
    const bound = (si: number): string =>
      Number.isFinite(si) ? formatExact(si, spec.kind, locale) : 'any'
    return `${input.label} is ${input.text}; the formula holds from ${bound(low)} to ${bound(high)}`
  }
  return undefined
}

type Cache = {
  readonly worked: Map<string, Worked>
  readonly rests: Map<string, ReadonlySet<string>>
}

function makeEngine(
  uses: readonly Use[],
  byId: ReadonlyMap<string, Use>,
  facts: ReadonlyMap<string, Fact>,
  locale: Locale,
  cache: Cache,
): Engine {
  const { worked, rests } = cache
  const running = new Set<string>()

  const bind = (
    name: string,
    binding: Binding,
    calculation: Calculation,
  ): FigureInput | { missing: string } => {
    const spec = calculation.inputs[name]
    if (!spec) throw new RangeError(`${calculation.id} has no input ${name}`)
    const shared = {
      name,
      symbol: spec.symbol,
      label: spec.label,
      kind: spec.kind,
      howTo: spec.howTo ?? '',
    }
    if ('fixed' in binding)
      return {
        ...shared,
        si: binding.fixed,
        text: formatExact(binding.fixed, spec.kind, locale),
        from: '',
        provenance: fixedProvenance(binding.why),
      }
    if ('fact' in binding) {
      const known = facts.get(binding.fact)
      if (!known) return { missing: `${spec.label} is not known` }
      return {
        ...shared,
        si: known.si,
        text: formatExact(known.si, spec.kind, locale),
        from: known.path,
        provenance: known.provenance,
        howTo: known.howTo,
      }
    }
    const figure = figureOf(binding.figure)
    if (!figure) return { missing: `${spec.label} is not known` }
    if (!figure.value.ok) return { missing: figure.value.reason }
    return {
      ...shared,
      si: figure.value.si,
      text: formatExact(figure.value.si, spec.kind, locale),
      from: figure.id,
      provenance: { kind: 'derived', figure: figure.id },
    }
  }

  const work = (use: Use): Worked => {
    const done = worked.get(use.id)
    if (done) return done
    if (running.has(use.id)) throw new RangeError(`figures of ${use.id} depend on themselves`)
    running.add(use.id)
    const { calculation } = use
    const bound = Object.keys(calculation.inputs).map((name) => {
      const binding = use.bindings[name]
      if (!binding) throw new RangeError(`${use.id} does not bind ${name}`)
      return bind(name, binding, calculation)
    })
    const inputs = bound.filter((b): b is FigureInput => !('missing' in b))
    const missing = bound.find((b): b is { missing: string } => 'missing' in b)?.missing
    const refusal = missing ?? outOfRange(calculation, inputs, locale)
    const values: Readonly<Record<string, number | Refusal>> =
      refusal === undefined
        ? calculation.compute(Object.fromEntries(inputs.map((i) => [i.name, i.si])))
        : {}
    const toMeasure = [...restsOnUse(use)].filter(
      (path) => facts.get(path)?.provenance.kind === 'typical',
    )
    const figures = Object.entries(calculation.outputs).map(([name, spec]): Figure => {
      const value = values[name] ?? { refused: refusal ?? 'not given' }
      const id = `${use.id}.${name}`
      if (typeof value === 'number' && !Number.isFinite(value))
        throw new RangeError(`${id} came out as ${value}`)
      return {
        id,
        label: use.labels?.[name] ?? spec.label,
        kind: spec.kind,
        worksheet: `W-${use.number}`,
        value: isRefusal(value)
          ? { ok: false, reason: value.refused }
          : { ok: true, si: value, ...formatQuantity(value, spec.kind, locale, spec.round) },
        estimate: toMeasure.length > 0,
        toMeasure,
      }
    })
    const result = { inputs, figures, values }
    worked.set(use.id, result)
    running.delete(use.id)
    return result
  }

  const figureOf = (id: string): Figure | undefined => {
    const use = byId.get(useIdOf(id))
    return use && work(use).figures.find((f) => f.id === id)
  }

  const restsOnUse = (use: Use): ReadonlySet<string> => {
    const known = rests.get(use.id)
    if (known) return known
    const paths = new Set<string>()
    // Stored before it is filled, so that a circle among the uses ends here and is reported by `work`.
    rests.set(use.id, paths)
    for (const binding of Object.values(use.bindings)) {
      if ('fact' in binding) paths.add(binding.fact)
      const inner = 'figure' in binding ? byId.get(useIdOf(binding.figure)) : undefined
      if (inner) for (const path of restsOnUse(inner)) paths.add(path)
    }
    return paths
  }

  return {
    uses,
    facts,
    hasFigure: (id) => {
      const use = byId.get(useIdOf(id))
      return use !== undefined && id.slice(use.id.length + 1) in use.calculation.outputs
    },
    figure: figureOf,
    worksheet: (useId) => {
      const use = byId.get(useId)
      if (!use) return undefined
      const { inputs, figures, values } = work(use)
      const { calculation } = use
      return {
        number: `W-${use.number}`,
        id: use.id,
        title: use.title ?? calculation.title,
        calculation: calculation.id,
        about: calculation.about,
        inputs,
        outputs: figures,
        formulas: formulaLines(use, inputs, values, locale),
        sources: calculation.sources,
      }
    },
    restsOn: (figureId) => {
      const use = byId.get(useIdOf(figureId))
      return use ? restsOnUse(use) : new Set()
    },
    vary: (changes) => {
      const changed = new Map(facts)
      for (const [path, si] of changes) {
        const fact = facts.get(path)
        if (fact) changed.set(path, { ...fact, si, text: formatExact(si, fact.kind, locale) })
      }
      const kept = new Map(
        [...worked].filter(([id]) => {
          const use = byId.get(id)
          return (
            use !== undefined && [...changes.keys()].every((path) => !restsOnUse(use).has(path))
          )
        }),
      )
      return makeEngine(uses, byId, changed, locale, { worked: kept, rests })
    },
  }
}

/** Makes the engine of a facility from its uses (what is computed from what) and its facts. */
export function createEngine(
  uses: readonly Use[],
  facts: ReadonlyMap<string, Fact>,
  locale: Locale,
): Engine {
  const byId = new Map<string, Use>()
  for (const use of uses) {
    if (byId.has(use.id)) throw new RangeError(`two uses are called ${use.id}`)
    byId.set(use.id, use)
  }
  return makeEngine(uses, byId, facts, locale, { worked: new Map(), rests: new Map() })
}

import type { Fact, Figure, FigureInput } from '../../model/figure.ts'
import { formatQuantity, type Locale } from '../../model/quantity/format-quantity.ts'
import type { KindName } from '../../model/quantity/kinds.ts'
import { isRefusal, type OutputSpec, type Refusal } from '../calculation.ts'
import { type Use, useIdOf } from '../uses/use.ts'
import { bindInputs, isMissing, outOfRange } from './binding.ts'
import type { Trace } from './trace.ts'
import type { Wording } from './wording.ts'

/** The kind of a fact, whether the facility has it or not; undefined for a name that is none. */
export type KindOfFact = (path: string) => KindName | undefined

/** What the engine works with. */
export type Given = {
  readonly uses: ReadonlyMap<string, Use<string>>
  readonly facts: ReadonlyMap<string, Fact<string>>
  readonly locale: Locale
  readonly trace: Trace
  readonly wording: Wording
  readonly kindOf: KindOfFact
  /** The uses, and the ids of all figures, in the order of the uses. */
  readonly all: readonly Use<string>[]
  readonly figureIds: readonly string[]
}

/** A use with its numbers put in. */
export type Worked = {
  readonly inputs: readonly FigureInput[]
  readonly figures: readonly Figure[]
  readonly values: Readonly<Record<string, number | Refusal>>
}

/** Works uses out as they are asked for, each once. */
export type Working = {
  readonly work: (use: Use<string>) => Worked
  readonly figureOf: (id: string) => Figure | undefined
}

/** A result as it is shown, with what it rests on. */
function toFigure(
  use: Use<string>,
  name: string,
  spec: OutputSpec,
  value: number | { readonly reason: string },
  { facts, locale, trace, wording }: Given,
): Figure {
  const id = `${use.id}.${name}`
  if (typeof value === 'number' && !Number.isFinite(value))
    throw new RangeError(`${id} came out as ${value}`)
  const toMeasure = [...trace.ofFigure(id)].filter(
    (path) => facts.get(path)?.provenance.kind === 'typical',
  )
  return {
    id,
    label: wording.output(use.calculation, name),
    kind: spec.kind,
    worksheet: wording.number(use),
    value:
      typeof value === 'object'
        ? { ok: false, reason: value.reason }
        : { ok: true, si: value, ...formatQuantity(value, spec.kind, locale, spec.round) },
    estimate: toMeasure.length > 0,
    toMeasure,
  }
}

function workOut(use: Use<string>, given: Given, figureOf: Working['figureOf']): Worked {
  const { calculation } = use
  const { facts, locale, wording } = given
  const bound = bindInputs(use, { facts, locale, wording, figureOf })
  const inputs = bound.filter((b): b is FigureInput => !isMissing(b))
  const refusal = bound.find(isMissing)?.missing ?? outOfRange(calculation, inputs, given)
  const values =
    refusal === undefined
      ? calculation.compute(Object.fromEntries(inputs.map((i) => [i.name, i.si])))
      : {}
  const figures = Object.entries(calculation.outputs).map(([name, spec]) => {
    const value = values[name]
    if (value === undefined) return toFigure(use, name, spec, { reason: refusal ?? '' }, given)
    const shown = isRefusal(value) ? { reason: wording.refusal(calculation, value.refused) } : value
    return toFigure(use, name, spec, shown, given)
  })
  return { inputs, figures, values }
}

/**
 * Begins to work.
 * @param elsewhere Works out what is the same in another working; undefined for the rest.
 * @throws RangeError when figures depend on themselves, or a formula gives no finite number.
 */
export function startWorking(
  given: Given,
  elsewhere: (use: Use<string>) => Worked | undefined,
): Working {
  const worked = new Map<string, Worked>()
  const running = new Set<string>()
  const work = (use: Use<string>): Worked => {
    const done = worked.get(use.id)
    if (done) return done
    if (running.has(use.id)) throw new RangeError(`figures of ${use.id} depend on themselves`)
    running.add(use.id)
    const result = elsewhere(use) ?? workOut(use, given, figureOf)
    worked.set(use.id, result)
    running.delete(use.id)
    return result
  }
  const figureOf = (id: string): Figure | undefined => {
    const use = given.uses.get(useIdOf(id))
    return use && work(use).figures.find((f) => f.id === id)
  }
  return { work, figureOf }
}

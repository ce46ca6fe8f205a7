import { type Fact, type Figure, type FigureInput, isEstimated } from '../../model/figure.ts'
import { formatQuantity, type Locale } from '../../model/quantity/format-quantity.ts'
import type { KindName } from '../../model/quantity/kinds.ts'
import { isRefusal, type OutputSpec, type Refusal } from '../calculation.ts'
import { type Use, useIdOf } from '../uses/use.ts'
import {
  type Bound,
  bindInputs,
  isMissing,
  outOfRange,
  type Result,
  shownInput,
} from './binding.ts'
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
  /** By facts the figures that rest on them. */
  readonly figuresOn: () => ReadonlyMap<string, readonly string[]>
}

/**
 * A use with its numbers put in. What is printed of it is put together when somebody asks: most uses
 * are worked out for the sake of others, or for what they come to at another value.
 */
export type Worked = {
  readonly values: Readonly<Record<string, number | Refusal>>
  readonly resultOf: (output: string) => Result | undefined
  readonly inputs: () => readonly FigureInput[]
  /** Of an output; undefined where there is none of that name. */
  readonly figure: (output: string) => Figure | undefined
}

/** Works uses out as they are asked for, each once. */
export type Working = {
  readonly work: (use: Use<string>) => Worked
  readonly resultOf: (id: string) => Result | undefined
  readonly figureOf: (id: string) => Figure | undefined
}

/** A result as it is shown, with what it rests on. */
function toFigure(
  use: Use<string>,
  name: string,
  spec: OutputSpec,
  result: Result,
  { facts, locale, trace, wording }: Given,
): Figure {
  const id = `${use.id}.${name}`
  const toMeasure = [...trace.ofFigure(id)].filter((path) => {
    const fact = facts.get(path)
    return fact !== undefined && isEstimated(fact.provenance)
  })
  const value = result.ok
    ? { ...result, ...formatQuantity(result.si, spec.kind, locale, spec.round) }
    : result
  return {
    id,
    label: wording.output(use.calculation, name, value.ok ? value.number : undefined),
    many: wording.output(use.calculation, name),
    kind: spec.kind,
    worksheet: wording.number(use),
    value,
    estimate: toMeasure.length > 0,
    toMeasure,
  }
}

/** What came of each output. @throws RangeError for a number that is none. */
function resultsOf(
  { id, calculation }: Use<string>,
  values: Worked['values'],
  refusal: string | undefined,
  { wording }: Given,
): ReadonlyMap<string, Result> {
  const resultOf = (name: string): Result => {
    const value = values[name]
    if (value === undefined) return { ok: false, reason: refusal ?? '' }
    if (isRefusal(value)) return { ok: false, reason: wording.refusal(calculation, value.refused) }
    if (!Number.isFinite(value)) throw new RangeError(`${id}.${name} came out as ${value}`)
    return { ok: true, si: value }
  }
  return new Map(Object.keys(calculation.outputs).map((name) => [name, resultOf(name)]))
}

function workOut(use: Use<string>, given: Given, resultOf: Working['resultOf']): Worked {
  const { calculation } = use
  const { facts, locale, wording } = given
  const bound = bindInputs(use, { facts, locale, wording, resultOf })
  const known = bound.filter((b): b is Bound => !isMissing(b))
  const refusal = bound.find(isMissing)?.missing ?? outOfRange(calculation, known, given)
  const values =
    refusal === undefined
      ? calculation.compute(Object.fromEntries(known.map((b) => [b.name, b.value.si])))
      : {}
  const results = resultsOf(use, values, refusal, given)
  const figures = new Map<string, Figure>()
  let inputs: readonly FigureInput[] | undefined
  return {
    values,
    resultOf: (output) => results.get(output),
    inputs: () => {
      inputs ??= known.map((b) => shownInput(b, calculation, given))
      return inputs
    },
    figure: (output) => {
      const [spec, result] = [calculation.outputs[output], results.get(output)]
      if (!spec || !result) return undefined
      const figure = figures.get(output) ?? toFigure(use, output, spec, result, given)
      figures.set(output, figure)
      return figure
    },
  }
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
    const result = elsewhere(use) ?? workOut(use, given, resultOf)
    worked.set(use.id, result)
    running.delete(use.id)
    return result
  }
  const of = <T>(id: string, ask: (worked: Worked, output: string) => T): T | undefined => {
    const use = given.uses.get(useIdOf(id))
    return use && ask(work(use), id.slice(use.id.length + 1))
  }
  const resultOf = (id: string): Result | undefined => of(id, (w, output) => w.resultOf(output))
  const figureOf = (id: string): Figure | undefined => of(id, (w, output) => w.figure(output))
  return { work, resultOf, figureOf }
}

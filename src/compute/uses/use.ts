import type { FactPath } from '../../model/fact-spec.ts'
import type { Calculation } from '../calculation.ts'
import type { CalculationOf, FigureId, UseId } from './ids.ts'
import type { ReasonId } from './reasons.ts'

type Fixed = { readonly fixed: number; readonly why: string }

/**
 * Where an input of a use comes from: a fact of the facility, another figure, or a number fixed by
 * the use itself.
 */
export type Binding =
  | { readonly fact: string }
  | { readonly figure: string; readonly otherwise?: Fixed }
  | Fixed

export const fact = (path: FactPath): Binding => ({ fact: path })
export const figure = (id: FigureId): Binding => ({ figure: id })
/** A figure, and nothing where it has no value; the worksheet says why nothing is put in. */
export const figureOr = (id: FigureId, why: ReasonId, si = 0): Binding => ({
  figure: id,
  otherwise: { fixed: si, why },
})
/**
 * A number (SI) that belongs to the question, not to the facility, such as the quarter inch in
 * "what a quarter inch costs".
 */
export const fixed = (si: number, why: ReasonId): Binding => ({ fixed: si, why })

type UseIn<Figure extends string> = Figure extends `${infer Id}.${string}` ? Id : string

/** `grade.time` → `grade`. */
export const useIdOf = <Figure extends string>(figure: Figure): UseIn<Figure> =>
  figure.slice(0, figure.lastIndexOf('.')) as UseIn<Figure>

/** One use of a calculation for the manual: its figures are `<id>.<output>`. */
export type Use<Id extends string = UseId> = {
  readonly id: Id
  readonly calculation: Calculation
  readonly bindings: Readonly<Record<string, Binding>>
}

/**
 * Declares a use; the compiler checks that the table of uses has it with this calculation, and that
 * every input of the calculation is bound. Its number and title stand in content/worksheets.
 */
export function use<Id extends UseId, C extends CalculationOf<Id>>(
  id: Id,
  calculation: C,
  bindings: Readonly<Record<C['inputNames'], Binding>>,
): Use<Id> {
  return { id, calculation, bindings }
}

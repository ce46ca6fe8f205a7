import type { Calculation } from '../calculation.ts'

/**
 * Where an input of a use comes from: a fact of the facility, another figure, or a number fixed by
 * the use itself.
 */
export type Binding =
  | { readonly fact: string }
  | { readonly figure: string }
  | { readonly fixed: number; readonly why: string }

export const fact = (path: string): Binding => ({ fact: path })
export const figure = (id: string): Binding => ({ figure: id })
/**
 * A number (SI) that belongs to the question, not to the facility, such as the quarter inch in
 * "what a quarter inch costs".
 */
export const fixed = (si: number, why: string): Binding => ({ fixed: si, why })

/** One use of a calculation for the manual: its figures are `<id>.<output>`. */
export type Use = {
  readonly id: string
  readonly calculation: Calculation
  readonly bindings: Readonly<Record<string, Binding>>
  /** Replaces the calculation's title on the worksheet. */
  readonly title?: string
  /** Replaces an output's label, such as "laps with the grader". */
  readonly labels?: Readonly<Record<string, string>>
  /** Stable worksheet number; never reused for another use. */
  readonly number: number
}

/** Declares a use; the compiler checks that every input of the calculation is bound. */
export function use<I extends string, O extends string>(
  number: number,
  id: string,
  calculation: Calculation & { readonly inputNames: I; readonly outputNames: O },
  bindings: Readonly<Record<NoInfer<I>, Binding>>,
  rest: {
    readonly title?: string
    readonly labels?: Readonly<Partial<Record<NoInfer<O>, string>>>
  } = {},
): Use {
  return { id, number, calculation, bindings, ...rest } as Use
}

import type { KindName, Rounding } from '../model/quantity/kinds.ts'

/** A declared input of a calculation. */
export type InputSpec = {
  /** TeX of the symbol, such as `S` or `\\rho_d`. */
  readonly symbol: string
  readonly kind: KindName
  /** Closed range in SI units inside which the formula holds. */
  readonly range: readonly [number, number]
  /** For empirical formulas: the unit in which the number must be put in, such as `in`. */
  readonly formulaUnit?: string
}

/** A declared output. */
export type OutputSpec = {
  readonly symbol: string
  readonly kind: KindName
  /** Right-hand side in TeX; `@name` stands for an input (or for an output named before it). */
  readonly tex: string
  /** For empirical formulas: the unit in which later outputs take this number, bare. */
  readonly formulaUnit?: string
  readonly round?: Rounding['mode']
  /**
   * Where the formula as printed does not name all that it rests on: the names of the inputs and
   * outputs, or `all` inputs.
   */
  readonly restsOn?: 'all' | readonly string[]
}

/**
 * A number that is not given, and why: the input lies outside what the formula is good for. The
 * id leads to the reason in words, in content/worksheets.
 */
export type Refusal<Id extends string = string> = { readonly refused: Id }

export const refuse = <const Id extends string>(id: Id): Refusal<Id> => ({ refused: id })

export const isRefusal = <Id extends string>(x: number | Refusal<Id>): x is Refusal<Id> =>
  typeof x !== 'number'

/** What is put into words where these say `{name}`: text, or a quantity that is printed in units. */
export type Told = Readonly<
  Record<string, string | { readonly si: number; readonly kind: KindName }>
>

/**
 * Partial values behind an output, as a table: readings with what each adds, or steps that no
 * single formula holds.
 */
export type Steps = {
  /** TeX of each column's head; numbers are SI of the kind, or bare where there is none. */
  readonly columns: readonly { readonly symbol: string; readonly kind?: KindName }[]
  /** Numbers, or TeX; what has no value in a row is empty. */
  readonly rows: readonly (readonly (number | string)[])[]
}

/** One small pure function with everything a reader needs to check it, save words. */
export type Calculation = {
  readonly id: string
  readonly inputs: Readonly<Record<string, InputSpec>>
  readonly outputs: Readonly<Record<string, OutputSpec>>
  /** Ids in shared/sources.json; `common-practice` and `geometry` are among them. */
  readonly sources: readonly string[]
  /** Ids of the reasons that `compute` may give instead of a number. */
  readonly refusals?: readonly string[]
  readonly told?: Told
  /** What stands in `\\text{…}` of the formulas and is a word, not a unit. */
  readonly terms?: readonly string[]
  /** Tables that `explain` prints besides the formulas, by their ids. */
  readonly steps?: Readonly<Record<string, (x: Readonly<Record<string, number>>) => Steps>>
  /** SI numbers in, SI numbers out, not rounded except to whole things (laps, loads). */
  readonly compute: (
    x: Readonly<Record<string, number>>,
  ) => Readonly<Record<string, number | Refusal>>
}

/** A calculation whose id and names are known to the compiler. */
export type Declared<Id extends string, I extends string, O extends string> = Calculation & {
  readonly id: Id
  readonly inputNames: I
  readonly outputNames: O
}

/**
 * Declares a calculation; the compiler checks that inputs, outputs and refusals are the ones
 * declared. Its words stand under its id in content/worksheets.
 */
export function calculation<
  const Id extends string,
  I extends string,
  O extends string,
  const R extends string = never,
>(spec: {
  readonly id: Id
  readonly inputs: Readonly<Record<I, InputSpec>>
  readonly outputs: Readonly<Record<O, OutputSpec>>
  readonly sources: readonly string[]
  readonly refusals?: readonly R[]
  readonly told?: Told
  readonly terms?: readonly string[]
  readonly steps?: Readonly<Record<string, (x: Readonly<Record<NoInfer<I>, number>>) => Steps>>
  readonly compute: (
    x: Readonly<Record<I, number>>,
  ) => Readonly<Record<O, number | Refusal<NoInfer<R>>>>
}): Declared<Id, I, O> {
  return spec as unknown as Declared<Id, I, O>
}

import type { KindName, Rounding } from '../model/quantity/kinds.ts'

/** A declared input of a calculation. */
export type InputSpec = {
  /** TeX of the symbol, such as `S` or `\\rho_d`. */
  readonly symbol: string
  /** Plain words for the worksheet: "length of one straight". */
  readonly label: string
  readonly kind: KindName
  /** Closed range in SI units inside which the formula holds. */
  readonly range: readonly [number, number]
  /** How it is measured in the field. */
  readonly howTo?: string
  /** For empirical formulas: the unit in which the number must be put in, such as `in`. */
  readonly formulaUnit?: string
}

/** A declared output. */
export type OutputSpec = {
  readonly symbol: string
  /** What the number is, in words that can stand under it: "laps for the whole width". */
  readonly label: string
  readonly kind: KindName
  /** Right-hand side in TeX; `@name` stands for an input (or for an output named before it). */
  readonly tex: string
  /** For empirical formulas: the unit in which later outputs take this number, bare. */
  readonly formulaUnit?: string
  readonly round?: Rounding['mode']
}

/** A number that is not given, and why: the input lies outside what the formula is good for. */
export type Refusal = { readonly refused: string }

export const refuse = (reason: string): Refusal => ({ refused: reason })

export const isRefusal = (x: number | Refusal): x is Refusal => typeof x !== 'number'

/** One small pure function with everything a reader needs to check it. */
export type Calculation = {
  readonly id: string
  readonly title: string
  /** What it answers and how to read it. */
  readonly about: string
  readonly inputs: Readonly<Record<string, InputSpec>>
  readonly outputs: Readonly<Record<string, OutputSpec>>
  /** Ids in shared/sources.json; `common-practice` and `geometry` are among them. */
  readonly sources: readonly string[]
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

/** Declares a calculation; the compiler checks that inputs and outputs are the ones declared. */
export function calculation<const Id extends string, I extends string, O extends string>(spec: {
  readonly id: Id
  readonly title: string
  readonly about: string
  readonly inputs: Readonly<Record<I, InputSpec>>
  readonly outputs: Readonly<Record<O, OutputSpec>>
  readonly sources: readonly string[]
  readonly compute: (x: Readonly<Record<I, number>>) => Readonly<Record<O, number | Refusal>>
}): Declared<Id, I, O> {
  return spec as unknown as Declared<Id, I, O>
}

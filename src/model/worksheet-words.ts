import type { UnitSystem } from './quantity/kinds.ts'

/** Words for both systems of units, or for each its own. */
export type Said = string | Readonly<Record<UnitSystem, string>>

/** Words that stand with a number: the same with every one, or others with just one. */
export type Counted = string | { readonly one: string; readonly other: string }

/** Words as they stand with a printed number; with many where none is given. */
export const counted = (words: Counted, number?: string): string =>
  typeof words === 'string' ? words : number === '1' ? words.one : words.other

/** The words of one calculation; names are those of its declaration. */
type CalculationWords = {
  readonly title: string
  /** What it answers and how to read it. */
  readonly about: string
  /** Plain words for each input: "length of one straight". */
  readonly inputs?: Readonly<Record<string, Counted>> | undefined
  /** What each number is, in words that can stand under it: "laps for the whole width". */
  readonly outputs: Readonly<Record<string, Counted>>
  /** Why a number is not given, by the ids of the calculation. */
  readonly refusals?: Readonly<Record<string, string>> | undefined
  /** Words inside its formulas. */
  readonly terms?: Readonly<Record<string, string>> | undefined
  /** Titles of the tables of its steps. */
  readonly steps?: Readonly<Record<string, string>> | undefined
}

/** A worksheet of the manual: its number, which is never given to another, and its own title. */
type SheetWords = { readonly number: number; readonly title?: Said | undefined }

/** Everything that worksheets say in words. */
export type WorksheetWords = {
  readonly calculations: Readonly<Record<string, CalculationWords>>
  /** By the id of the use. */
  readonly worksheets: Readonly<Record<string, SheetWords>>
  /** Why a number is fixed by the question and not by the facility. */
  readonly reasons: Readonly<Record<string, Said>>
  /** Why no number is given, where no calculation says so. */
  readonly noNumber: {
    /** `{input}` has no value here. */
    readonly unknown: string
    /** `{input}` is `{value}`, outside `{low}` to `{high}`. */
    readonly outside: string
    /** Stands for a bound that there is not. */
    readonly any: string
  }
}

import type { FactPath } from './fact-spec.ts'
import type { Place } from './problem.ts'
import type { Rounded } from './quantity/format-quantity.ts'
import type { KindName } from './quantity/kinds.ts'

/** Where the value of an input comes from. */
export type Provenance =
  | { readonly kind: 'measured'; readonly at: Place; readonly date: string; readonly by: string }
  | { readonly kind: 'stated'; readonly at: Place }
  /** Stated as no more than an estimate, such as `about 60 ft`; so is whatever rests on it. */
  | { readonly kind: 'rough'; readonly at: Place }
  /** Nobody has said: a usual value from reference data. Whatever rests on it is an estimate. */
  | { readonly kind: 'typical'; readonly sources: readonly string[]; readonly note: string }
  /** A written rule of racing, of law or of a standard; nothing to measure. */
  | { readonly kind: 'rule'; readonly sources: readonly string[]; readonly note: string }
  /** What the manual chooses where the facility does not: an example, a tolerance, a lead time. */
  | { readonly kind: 'choice'; readonly sources: readonly string[]; readonly note: string }
  | { readonly kind: 'derived'; readonly figure: string }

/** Whether what rests on a value is an estimate. */
export const isEstimated = ({ kind }: Provenance): boolean => kind === 'typical' || kind === 'rough'

/** A known quantity of the facility: a line of its file, or what stands in for it. */
export type Fact<Path extends string = FactPath> = {
  /**
   * Path in the facility file, such as `oval.width.turns`, or `gear.grade.width` for the machine
   * chosen to grade.
   */
  readonly path: Path
  readonly label: string
  readonly kind: KindName
  readonly si: number
  /** As printed in the facility's units. */
  readonly text: string
  readonly provenance: Provenance
  /** How it is measured in the field, in plain words. */
  readonly howTo: string
}

/** One input of a worksheet. */
export type FigureInput = {
  readonly name: string
  readonly symbol: string
  readonly label: string
  readonly kind: KindName
  readonly si: number
  readonly text: string
  /** The fact's path or the figure's id; a constant of the plan has none. */
  readonly from: string
  readonly provenance: Provenance
  readonly howTo: string
}

/** A computed quantity with its history. */
export type Figure = {
  readonly id: string
  /** As it stands with its value. */
  readonly label: string
  /** As it stands with many, over a column of values. */
  readonly many: string
  readonly kind: KindName
  /** The worksheet that shows its working, such as `W-12`. */
  readonly worksheet: string
  readonly value:
    | {
        readonly ok: true
        readonly si: number
        readonly number: string
        readonly unit: string
        readonly text: string
        readonly rounding: Rounded
      }
    /** Why there is no number: out of the formula's range, or something is not known. */
    | { readonly ok: false; readonly reason: string }
  /** Rests, directly or not, on a value that is an estimate. */
  readonly estimate: boolean
  /** Paths of those facts that it rests on: what to measure to make it sharp. */
  readonly toMeasure: readonly string[]
}

/** The working of one use of one calculation. */
export type Worksheet = {
  /** Stable number, such as `W-12`. */
  readonly number: string
  /** Id of the use, such as `grade`. */
  readonly id: string
  readonly title: string
  readonly calculation: string
  /** What it is for and how to read it, in plain words. */
  readonly about: string
  readonly inputs: readonly FigureInput[]
  readonly outputs: readonly Figure[]
  /** One TeX line per output: the formula, and the formula with this facility's numbers put in. */
  readonly formulas: readonly {
    readonly figure: string
    readonly tex: string
    readonly numbers: string
    /** As `numbers`, with `@name` where each number stands. */
    readonly places: string
    /** The printed quantity for each of these places; what has no value is missing. */
    readonly put: Readonly<Record<string, string>>
    /** TeX of the outputs among these, which stand as symbols where they have no value. */
    readonly symbols: Readonly<Record<string, string>>
  }[]
  readonly sources: readonly string[]
}

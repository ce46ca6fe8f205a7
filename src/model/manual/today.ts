import type { UnitWords } from '../quantity/format-quantity.ts'
import type { KindName, UnitSystem } from '../quantity/kinds.ts'
import type { Text } from './text.ts'

/** Everything that the calculations of this facility need, without words that pages do not say. */
export type Sums = {
  readonly system: UnitSystem
  readonly currency: string
  readonly unitWords: UnitWords | undefined
  /** Path, kind, value (SI), and 1 for a usual value that nobody has measured here. */
  readonly facts: readonly (readonly [path: string, kind: KindName, si: number, typical?: 1])[]
  /** Facts without a value here that a reader may suppose, with their kinds. */
  readonly supposed: Readonly<Record<string, KindName>>
  /** What decides and is no quantity. */
  readonly known: readonly string[]
  /** Uses that take figures of surveys and records, which pages do not carry. */
  readonly without: readonly string[]
  readonly words: {
    /** By the id of the calculation: what its inputs are, and why it gives no number. */
    readonly calculations: Readonly<
      Record<string, readonly [Readonly<Record<string, string>>, Readonly<Record<string, string>>]>
    >
    readonly noNumber: { readonly unknown: string; readonly outside: string; readonly any: string }
  }
}

/** A fact that changes from day to day. */
export type DayFact = {
  readonly path: string
  /** What it is called on the day: "highest temperature today". */
  readonly label: string
  readonly kind: KindName
  /** How much a touch of more or less adds, in the unit that it is printed in. */
  readonly step: number
  /** Believable values, SI. */
  readonly range: readonly [number, number]
  /** As printed in the manual; empty where the facility has no value. */
  readonly said: string
}

export type DayFactGroup = {
  readonly id: string
  readonly title: string
  readonly facts: readonly DayFact[]
}

/** A question with the numbers that answer it. */
export type DayResult = { readonly title: Text; readonly figures: readonly string[] }

/** What a row of a clock or of the day's list waits for. */
export type Waits = {
  /** Names of figures and facts that must have a value. */
  readonly needs: readonly string[]
  /** Names of which none may have one. */
  readonly lacks: readonly string[]
  readonly above: readonly string[]
  readonly zero: readonly string[]
}

/** Times counted from one that is entered. */
export type DayClock = {
  readonly id: string
  readonly title: string
  /** What the time is that is entered: "rain comes at". */
  readonly at: string
  readonly about: Text
  /** It may be right now. */
  readonly now: boolean
  readonly rows: readonly (Waits & {
    readonly figure: string
    /** Counted back from the time that is entered. */
    readonly before: boolean
    readonly says: Text
  })[]
}

/** The race day by the hour. */
export type DayList = {
  /** The plan that shows it on paper. */
  readonly plan: string
  readonly title: string
  readonly rows: readonly (Waits & {
    /** A figure or fact: the time of the day. */
    readonly at: string
    readonly when: Text
    readonly says: Text
    readonly who: Text
  })[]
}

/** A day of races with what its program says, for the facts of the day alone. */
export type DayProgram = {
  readonly date: string
  /** As people read it. */
  readonly called: string
  /** As printed, by path. */
  readonly says: Readonly<Record<string, string>>
}

/** A ready reckoner as it is worked out again: names, and values as people write them. */
export type DayReckoner = {
  readonly id: string
  readonly figure: string
  readonly to?: string | undefined
  readonly rows: DayAxis
  readonly columns?: DayAxis | undefined
  readonly figures?: readonly DayColumn[] | undefined
}
export type DayAxis = {
  readonly fact: string
  readonly 'up-to'?: string | undefined
  readonly us: readonly string[]
  readonly metric: readonly string[]
}
export type DayColumn = { readonly figure: string; readonly to?: string | undefined }

/** What can be worked out anew for a day. */
export type ManualToday = {
  readonly groups: readonly DayFactGroup[]
  readonly results: readonly DayResult[]
  readonly clocks: readonly DayClock[]
  readonly list: DayList | undefined
  readonly programs: readonly DayProgram[]
  readonly reckoners: readonly DayReckoner[]
  /** Names of the figures that rest on a fact of the day, and of these facts. */
  readonly follows: readonly string[]
  readonly sums: Sums
}

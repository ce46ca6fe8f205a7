import type { Capability } from '../capability.ts'
import type { ManualCaution } from './caution.ts'
import type { ManualReckoner } from './reckoner.ts'
import type { Text } from './text.ts'

export type ManualStep = {
  readonly number: number
  readonly do: Text
  readonly note: Text | undefined
  /** Hazards of this step alone. */
  readonly cautions: readonly ManualCaution[]
  /** Names of quantities for the margin. */
  readonly figures: readonly string[]
  /** Name of the drawing that it cites. */
  readonly drawing: string | undefined
}

export type ManualMethod = {
  readonly id: string
  readonly title: string
  readonly choose: Text | undefined
  readonly steps: readonly ManualStep[]
}

/** Steps that belong together on a posted sheet; numbers go on from the group before them. */
export type SheetGroup = {
  /** What leads here in the table of what was found; undefined where there is no choice. */
  readonly letter: string | undefined
  /** Id of its way of working; undefined for what every way has in common. */
  readonly method: string | undefined
  /** Undefined for what every way has in common, and where there is one way alone. */
  readonly title: string | undefined
  readonly steps: readonly ManualStep[]
}

export type ManualSheet = {
  readonly when: Text
  readonly figures: readonly { readonly name: string; readonly label: Text }[]
  /** Roles of those who may have to be called; with number and place they stand first. */
  readonly calls: readonly string[]
  /** What was found, and where that leads: a letter of this sheet, or another procedure. */
  readonly look: readonly {
    readonly found: Text
    readonly do: Text
    readonly letter: string | undefined
    readonly procedure: string | undefined
  }[]
  /** All ways that apply here; what they have in common at the beginning stands once. */
  readonly groups: readonly SheetGroup[]
  /** Name of the drawing that stands on the sheet; one of its steps cites it. */
  readonly drawing: string | undefined
  readonly done: readonly Text[]
  readonly stop: readonly Text[]
  readonly reckoner: ManualReckoner | undefined
  readonly worksheets: readonly string[]
}

/** A procedure with only what applies to this facility. */
export type ManualProcedure = {
  readonly id: string
  /** Section and place in it, such as `2.1`; pages are numbered `2-1`. */
  readonly number: string
  readonly title: string
  /** What the bar of every page of the site calls it, where it stands there. */
  readonly bar: string | undefined
  readonly section: string
  readonly purpose: Text
  readonly triggers: readonly Text[]
  readonly symptoms: readonly string[]
  readonly who: { readonly people: number; readonly roles: Text; readonly authority: Text }
  /** Each entry is "figure, words" ready to be read after "Time". */
  readonly time: readonly { readonly figure: string | undefined; readonly text: Text | undefined }[]
  /** Machines for each capability that the work asks for, or what to do instead. */
  readonly gear: readonly {
    readonly can: Capability
    readonly why: Text
    readonly machine: string | undefined
    readonly instead: Text | undefined
  }[]
  readonly tools: readonly Text[]
  readonly materials: readonly { readonly name: Text; readonly figure: string | undefined }[]
  /** What belongs to the whole work: one box, the worst first. */
  readonly cautions: readonly ManualCaution[]
  /** What the box is read before. */
  readonly before: 'machine' | 'start' | 'self'
  readonly measure: readonly {
    readonly do: Text
    readonly how: Text | undefined
    /** The drawing that shows how, by id in `renderDrawings`. */
    readonly drawing: string | undefined
  }[]
  readonly branches: readonly {
    readonly found: Text
    readonly do: Text
    readonly method: string | undefined
    readonly procedure: string | undefined
  }[]
  readonly methods: readonly ManualMethod[]
  readonly checks: readonly Text[]
  readonly failures: readonly {
    readonly see: Text
    readonly do: Text
    readonly procedure: string | undefined
  }[]
  readonly stop: readonly Text[]
  readonly records: readonly Text[]
  readonly background: readonly { readonly text: Text; readonly source: string }[]
  readonly references: readonly string[]
  readonly reckoners: readonly ManualReckoner[]
  readonly next: string | undefined
  /** What the facility itself adds to this procedure. */
  readonly notes: readonly Text[]
  readonly sheet: ManualSheet
  readonly training: {
    readonly aims: readonly Text[]
    readonly show: readonly Text[]
    readonly practice: readonly Text[]
    /** What the questions are about, by id in `renderDrawings`. */
    readonly drawing?: string | undefined
    readonly questions: readonly {
      readonly ask: Text
      readonly choices: readonly Text[]
      readonly right: number
      readonly why: Text
    }[]
  }
}

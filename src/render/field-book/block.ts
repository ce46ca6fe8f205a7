import type { Html } from '../text/html.ts'
import type { CautionBox } from '../views/caution-box.ts'
import type { CautionView } from '../views/caution-view.ts'
import type { emergencyView } from '../views/emergency-view.ts'
import type { FigureView } from '../views/figure-view.ts'
import type { ReckonerView } from '../views/reckoner-view.ts'
import type { TableView } from '../views/schedules-view.ts'
import type { SymptomView } from '../views/symptoms-view.ts'

type Words = Html | string

/** A warning of a step in one line. */
type Mind = Pick<CautionView, 'signal' | 'word' | 'avoid'>

type StepsOfBlock = {
  readonly start: number
  readonly list: readonly {
    readonly number: number
    readonly do: Html
    readonly note: Html
    readonly hasNote: boolean
    readonly minds: readonly Mind[]
  }[]
}

/** What a block may hold; templates ask for each entry, so that all are there. */
type Contents = {
  /** What leads here in the table of what was found. */
  readonly letter: string | undefined
  readonly heading: Words | undefined
  readonly about: Html | undefined
  readonly estimate: boolean
  /** Label and words in one line. */
  readonly line: { readonly label: string; readonly text: Html } | undefined
  readonly list: { readonly label: string; readonly items: readonly Html[] } | undefined
  /** The same, one item behind the other. */
  readonly inline: { readonly label: string; readonly items: readonly Html[] } | undefined
  readonly stop: { readonly label: string; readonly items: readonly Html[] } | undefined
  /** The page with the warnings that all work has in common is named. */
  readonly before: boolean
  readonly look:
    | readonly {
        readonly found: Html
        readonly do: Html
        readonly letter: string
        /** Where else it leads. */
        readonly at: Html
      }[]
    | undefined
  readonly steps: StepsOfBlock | undefined
  readonly failures: readonly { readonly see: Html; readonly do: Html }[] | undefined
  readonly figures: readonly FigureView[] | undefined
  readonly box: CautionBox | undefined
  readonly drawing: Html | undefined
  /** A part of the emergency page: the call, whom to call, or where things are kept. */
  readonly emergency:
    | { readonly [part in 'call' | 'who' | 'kept']?: ReturnType<typeof emergencyView> }
    | undefined
  readonly table: TableView | undefined
  readonly reckoner: ReckonerView | undefined
  readonly prose: Html | undefined
  readonly symptom:
    | (Omit<SymptomView, 'causes'> & {
        readonly causes: readonly (SymptomView['causes'][number] & { readonly at: Html })[]
      })
    | undefined
  readonly terms: readonly { readonly term: string; readonly means: Html }[] | undefined
  readonly findings:
    | readonly { readonly title: Html; readonly do: Html; readonly numbers: Html }[]
    | undefined
}

/** A piece of a page. */
export type Block = Contents

const empty: Contents = {
  letter: undefined,
  heading: undefined,
  about: undefined,
  estimate: false,
  line: undefined,
  list: undefined,
  inline: undefined,
  stop: undefined,
  before: false,
  look: undefined,
  steps: undefined,
  failures: undefined,
  figures: undefined,
  box: undefined,
  drawing: undefined,
  emergency: undefined,
  table: undefined,
  reckoner: undefined,
  prose: undefined,
  symptom: undefined,
  terms: undefined,
  findings: undefined,
}

export const block = (holds: Partial<Contents>): Block => ({ ...empty, ...holds })

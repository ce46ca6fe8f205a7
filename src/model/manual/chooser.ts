import type { Text } from './text.ts'

/** What leads from something seen to its cause. */
export type Chooser = {
  readonly questions: readonly {
    readonly id: string
    readonly ask: Text
    /** Answers that fit something here. */
    readonly answers: readonly {
      readonly id: string
      readonly says: Text
      /** Ids of the symptoms that it fits; a question that a symptom does not answer rules none out. */
      readonly symptoms: readonly string[]
    }[]
  }[]
  /** What tells causes apart. */
  readonly measures: readonly {
    readonly id: string
    readonly do: Text
    /** The procedure that explains it, where there is one here. */
    readonly procedure: string | undefined
  }[]
}

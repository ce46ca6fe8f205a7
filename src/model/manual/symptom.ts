import type { Text } from './text.ts'

export type ManualSymptom = {
  readonly id: string
  readonly says: Text
  readonly looks: Text
  readonly causes: readonly {
    readonly check: Text
    /** What is done for it: the id of a measure of the chooser. */
    readonly by: string
    readonly cause: Text
    readonly procedure: string
  }[]
  readonly stop: Text
}

import type { Text } from './text.ts'

/** A table of one calculation over values that change in the field, in the facility's units. */
export type ManualReckoner = {
  readonly id: string
  readonly title: string
  readonly about: Text
  /** What runs down the rows, and the heads of the other columns. */
  readonly rowHead: string
  readonly columnHeads: readonly string[]
  /** What the columns are, when they are values of a second input. */
  readonly columnsHead: string | undefined
  readonly rows: readonly {
    readonly head: string
    readonly cells: readonly string[]
    /** The row of this facility's own value. */
    readonly own: boolean
  }[]
  readonly worksheet: { readonly number: string; readonly id: string }
  readonly estimate: boolean
}

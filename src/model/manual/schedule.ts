import type { Text } from './text.ts'

/** Rows of a table; the first cell of each is its head. */
export type TableRows = readonly (readonly Text[])[]

/** A list worked out for this facility. */
export type ManualTable = {
  readonly id: string
  readonly title: Text
  readonly about: Text | undefined
  /** Race days that it is for, where others have one of their own. */
  readonly days: string | undefined
  readonly heads: readonly Text[]
  readonly rows: TableRows
  /** Its numbers stand as plain text, and some of them are estimates. */
  readonly estimate: boolean
}

/** A plan of work, a survey, a record or an order list, on pages of its own. */
export type ManualSchedule = {
  readonly id: string
  readonly title: string
  readonly about: Text
  readonly drawings: readonly string[]
  readonly tables: readonly ManualTable[]
}

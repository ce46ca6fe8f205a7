/** A source that something in the manual cites. */
export type CitedSource = {
  readonly id: string
  /** The printed reference. */
  readonly text: string
  /** Number or, without one, title: as a table has room for. */
  readonly short: string
}

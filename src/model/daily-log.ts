/** What the daily log says of one day: SI units, and words as they were written. */
export type LoggedDay = {
  readonly date: string
  /** What the track was used for, in the log's own words. */
  readonly use: string | undefined
  /** Loads of water put down. */
  readonly loads: number | undefined
  /** Water in store in the evening, m³. */
  readonly stored: number | undefined
  /** What was done, what was seen and heard, what is to be done the day after. */
  readonly work: string | undefined
  readonly seen: string | undefined
  readonly tomorrow: string | undefined
}

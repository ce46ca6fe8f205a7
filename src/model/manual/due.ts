/** Something that is due on a day: a task of the countdown, or a race day. */
export type Due = {
  /** `YYYY-MM-DD`, to be held against today. */
  readonly date: string
  /** As printed. */
  readonly label: string
  readonly task: string
  readonly isRaceDay: boolean
}

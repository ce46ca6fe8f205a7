import type { Text } from './text.ts'

/**
 * When something is: a whole day, `YYYY-MM-DD`, or hours. Hours are moments of Universal Time
 * (`2027-08-03T22:30:00Z`), or, where nobody has said in which zone the place lies, times of its own
 * clock (`2027-08-03T17:30:00`).
 */
export type CalendarTime =
  | { readonly kind: 'day'; readonly date: string }
  | { readonly kind: 'hours'; readonly from: string; readonly to: string }

export type CalendarEntry = {
  /** The same in every revision, also where the date has moved; unique within the facility. */
  readonly id: string
  readonly title: Text
  /** Lines; empty where the title says all. */
  readonly notes: readonly Text[]
  readonly time: CalendarTime
}

/** What one reader takes into a calendar, by time. */
export type ManualCalendar = {
  readonly id: string
  readonly title: string
  readonly about: string
  readonly entries: readonly CalendarEntry[]
}

import type { Locale } from '../../model/quantity/format-quantity.ts'
import type { RecordsData } from '../../render/site/records/records-script.ts'
import type { DayKept, Kept } from './kept.ts'
import type { RecordStore } from './store.ts'

/** What all parts of the page work with. */
export type Desk = {
  readonly data: RecordsData
  readonly locale: Locale
  readonly store: RecordStore
  /** The day that is written on. */
  readonly day: () => string
  readonly today: () => string
  readonly kept: () => DayKept
  /** Writes a text of the day; whoever shows it follows. */
  readonly write: (name: string, text: string) => void
  /** Puts other records in place of all. */
  readonly put: (kept: Kept) => void
  /** Shows everything anew, since days or records have changed. */
  readonly show: () => void
  /** Says something to everybody, readers of screens too. */
  readonly say: (text: string) => void
}

/** A part of the page, shown anew after every change. */
export type Part = { readonly show: () => void }

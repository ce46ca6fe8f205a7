import type { UnitSystem } from '../../../model/quantity/kinds.ts'
import type { ManualRecords } from '../../../model/records.ts'
import { months } from '../../../validate/schemas/words/calendar.ts'
import type { Words } from '../../../validate/schemas/words.ts'
import type { SiteContext } from '../page.ts'

/** All that the script of the records is given beside its page. */
export type RecordsData = ManualRecords & {
  /** The facility, under whose name a phone keeps its records. */
  readonly id: string
  readonly system: UnitSystem
  readonly currency: string
  /** Short names of the months. */
  readonly months: readonly string[]
  readonly words: Pick<Words, 'records' | 'units'>
}

/** The same as a script, which a page from disk can load where it may not fetch. */
export function recordsScript({ manual, words }: SiteContext): string {
  const data: RecordsData = {
    ...manual.records,
    id: manual.facility.id,
    system: manual.facility.system,
    currency: manual.facility.currency,
    months: months.map((month) => words.calendar.shortMonths[month]),
    words: { records: words.records, units: words.units },
  }
  return `var recordsData=${JSON.stringify(data)}\n`
}

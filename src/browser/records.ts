// The script of the records: keeps what is written on this phone.
import type { RecordsData } from '../render/site/records/records-script.ts'
import { recordsPage } from './records/records-page.ts'

declare global {
  /** Made with the pages, in a script of its own. */
  var recordsData: RecordsData
}

recordsPage(globalThis.recordsData)

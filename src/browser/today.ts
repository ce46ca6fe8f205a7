// Numbers of the day: what somebody puts in on this phone, and all that follows from it.
import type { DayFile } from '../model/today.ts'
import { startPage } from './today/start-page.ts'

declare global {
  /** Made with the pages, in a script of its own. */
  var dayNumbers: DayFile
}

startPage(globalThis.dayNumbers, () => new Date())

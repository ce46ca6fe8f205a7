import * as z from 'zod'
import type { LoggedDay } from '../../model/daily-log.ts'
import { readDailyLog } from './daily-log-table.ts'
import type { Import } from './import.ts'
import { tableFile } from './table-file.ts'

/** The entry of the facility file: the daily log as a table in the facility folder. */
const logEntry = z.strictObject({ ...tableFile })

/** A facility has one log at most. */
export const dailyLog = {
  under: 'top',
  entries: logEntry,
  read: (source, _, context) => readDailyLog(source, context),
} as const satisfies Import<z.output<typeof logEntry>, readonly LoggedDay[]>

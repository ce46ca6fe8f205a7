import * as z from 'zod'
import { line } from '../schemas/text.ts'
import type { Import } from './import.ts'
import { type MoistureSamples, readMoisture } from './moisture-table.ts'
import { tableFile } from './table-file.ts'

/** The entry of the facility file: samples of moisture as a table in the facility folder. */
const moistureEntry = z.strictObject({ ...tableFile, by: line })

/** A facility has one table of samples at most. */
export const moisture = {
  under: 'top',
  entries: moistureEntry,
  read: readMoisture,
} as const satisfies Import<z.output<typeof moistureEntry>, MoistureSamples>

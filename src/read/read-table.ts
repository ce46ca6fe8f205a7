import type { Result } from '../model/problem.ts'
import { tooLong } from './limits.ts'
import { type CsvTable, readCsv } from './read-csv.ts'
import { sheetTable } from './sheet-table.ts'
import type { SourceFile } from './source-file.ts'

/** Reads a table, whether it is a text of separated values or a sheet of a workbook. */
export function readTable(file: SourceFile): Result<CsvTable> {
  const large = tooLong(file)
  if (large) return { value: undefined, problems: [large] }
  return file.sheet ? sheetTable(file, file.sheet) : readCsv(file)
}

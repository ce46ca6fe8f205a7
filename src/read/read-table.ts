import type { Result } from '../model/problem.ts'
import { type CsvTable, readCsv } from './read-csv.ts'
import { sheetTable } from './sheet-table.ts'
import type { SourceFile } from './source-file.ts'

/** Reads a table, whether it is a text of separated values or a sheet of a workbook. */
export const readTable = (file: SourceFile): Result<CsvTable> =>
  file.sheet ? sheetTable(file, file.sheet) : readCsv(file)

import type { Place, Problem, Result } from '../model/problem.ts'
import { dialectOf, isRecord } from './csv-dialect.ts'
import { type CsvField, type Delimiter, readRecords } from './csv-fields.ts'
import { placeAt, problemAt, type SourceFile } from './source-file.ts'
import { unprintableIn, unprintableProblem } from './unprintable.ts'
import type { SheetCell } from './workbook/sheet.ts'
import { disguise } from './yaml-faults/disguise.ts'

/** One cell of a table, trimmed, with the place where it stands. */
export type CsvCell = {
  readonly text: string
  readonly place: Place
  /** What a workbook keeps in the cell; numbers and days of one have no style of writing. */
  readonly kind?: SheetCell['kind']
}

/** A table with its head; every row has as many cells as the head. */
export type CsvTable = {
  readonly file: SourceFile
  /** What stands between the cells of a text. */
  readonly delimiter?: Delimiter
  readonly head: readonly CsvCell[]
  readonly rows: readonly (readonly CsvCell[])[]
}

/** A cell without the white space around it; a line break inside one is a space. */
function toCell(file: SourceFile, field: CsvField): CsvCell {
  const text = field.text.trim()
  const lead = text === '' ? 0 : field.text.length - field.text.trimStart().length
  return {
    text: text.replace(/\s*[\r\n]\s*/g, ' '),
    place: placeAt(file, field.start + lead, text.length),
  }
}

export const noRows = (file: SourceFile): Problem =>
  problemAt(file, placeAt(file, 0, 1), 'file/empty', 'the table has no rows', {
    hint: 'the first line names the columns, each line after it is one reading',
  })

/** A row that has other cells than the head. */
function uneven(
  file: SourceFile,
  row: readonly CsvField[],
  wanted: number,
  delimiter: Delimiter,
): Problem {
  const [start, end] = [row[0]?.start ?? 0, row.at(-1)?.end ?? 0]
  return problemAt(
    file,
    placeAt(file, start, end - start),
    'schema/format',
    `${row.length} cells where the head has ${wanted}`,
    {
      hint:
        delimiter === ','
          ? 'a comma inside a value needs quotes around it, such as "1,200 ft"'
          : `what stands between cells needs quotes around it inside a value, such as "left${delimiter}right"`,
    },
  )
}

/**
 * Reads a table of values separated by commas (RFC 4180), semicolons, tabs or bars, whose first line
 * names the columns. Blank lines and lines that begin with # are left out.
 */
export function readCsv(file: SourceFile): Result<CsvTable> {
  const other = disguise(file.text)
  if (other)
    return {
      value: undefined,
      problems: [
        problemAt(file, placeAt(file, other.at, other.length), 'file/format', other.message, {
          hint: 'open it in the program that made it and save the sheet as CSV (UTF-8)',
        }),
      ],
    }
  // A byte order mark is no part of the first head, and moves no column.
  const text = file.text.replace(/^\uFEFF/, ' ')
  const { delimiter, from } = dialectOf(text)
  const { records, fault } = readRecords(text, delimiter, from)
  if (fault)
    return {
      value: undefined,
      problems: [
        problemAt(file, placeAt(file, fault.at, 1), 'file/format', fault.message, {
          hint: 'a quote inside a quoted value is written twice: "6"" deep"',
        }),
      ],
    }
  const odd = unprintableIn(file.text)
  if (odd) return { value: undefined, problems: [unprintableProblem(file, odd.at, 1, odd.name)] }
  const [head, ...rows] = records.filter(isRecord)
  if (!head || rows.length === 0) return { value: undefined, problems: [noRows(file)] }
  const problems = rows
    .filter((row) => row.length !== head.length)
    .map((row) => uneven(file, row, head.length, delimiter))
  if (problems.length > 0) return { value: undefined, problems }
  const cells = (row: readonly CsvField[]): CsvCell[] => row.map((field) => toCell(file, field))
  return { value: { file, delimiter, head: cells(head), rows: rows.map(cells) }, problems }
}

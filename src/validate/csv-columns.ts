import { closest } from '../model/closest.ts'
import { factSpec } from '../model/fact-spec.ts'
import type { Problem, Result } from '../model/problem.ts'
import type { CsvCell, CsvTable } from '../read/read-csv.ts'
import { problemAt } from '../read/source-file.ts'
import { readMeasured } from './schemas/quantity.ts'

/** A column of a table; `unit` stands in the head for all its cells. */
export type CsvColumn = { readonly index: number; readonly unit: string }
export type CsvColumns = Readonly<Record<string, CsvColumn>>

/**
 * The name of a column and, where the head gives one, the unit of all its cells: `station (ft)`.
 */
const columnHead = /^([a-z]+)(?:\s*[([]\s*(.+?)\s*[)\]])?$/

/**
 * Finds the columns of a table by their heads.
 * @param required Names that must be there.
 * @param optional Names that may be there.
 * @param example A head as it could be written.
 */
export function findColumns(
  table: CsvTable,
  required: readonly string[],
  optional: readonly string[],
  example: string,
): Result<CsvColumns> {
  const names = [...required, ...optional]
  const problems: Problem[] = []
  const found: Record<string, CsvColumn> = {}
  for (const [index, { text, place }] of table.head.entries()) {
    const [, , written = ''] = columnHead.exec(text) ?? []
    const [, name = text] = columnHead.exec(text.toLowerCase()) ?? []
    if (names.includes(name) && !(name in found))
      found[name] = { index, unit: written || (/[([]\s*(.+?)\s*[)\]]$/.exec(text)?.[1] ?? '') }
    else {
      const near = closest(name, names)
      problems.push(
        problemAt(
          table.file,
          place,
          'schema/unknown-key',
          name in found ? `the column "${name}" stands here twice` : `unknown column "${text}"`,
          {
            hint:
              near && !(near in found)
                ? `did you mean "${near}"?`
                : `the columns are ${names.join(', ')}`,
          },
        ),
      )
    }
  }
  const missing = required.filter((n) => !(n in found))
  const head = table.head[0]
  if (missing.length > 0 && head)
    problems.push(
      problemAt(
        table.file,
        head.place,
        'schema/missing',
        `the head lacks ${missing.map((m) => `"${m}"`).join(', ')}`,
        { hint: `write it as, for example: ${example}` },
      ),
    )
  return problems.length > 0 ? { value: undefined, problems } : { value: found, problems }
}

/** A fault in a cell. */
export const cellProblem = (
  table: CsvTable,
  cell: CsvCell,
  code: Problem['code'],
  message: string,
  hint?: string,
): Problem => problemAt(table.file, cell.place, code, message, hint === undefined ? {} : { hint })

/**
 * A cell as the quantity of a fact, with the unit of its column where the cell has none of its own.
 */
export function readCell(
  table: CsvTable,
  cell: CsvCell,
  column: CsvColumn,
  factPath: string,
): number | Problem {
  const spec = factSpec(factPath)
  if (!spec) throw new RangeError(`no fact ${factPath}`)
  const bare = /^[-+.\d][\d.,/ -]*$/.test(cell.text)
  const read = readMeasured(
    factPath,
    bare && column.unit !== '' ? `${cell.text} ${column.unit}` : cell.text,
  )
  return 'si' in read
    ? read.si
    : cellProblem(table, cell, read.params.code, read.message, read.params.hint)
}

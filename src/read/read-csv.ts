import { csvParseRows } from 'd3-dsv'
import type { Place, Result } from '../model/problem.ts'
import { placeAt, problemAt, type SourceFile } from './source-file.ts'

/** One cell of a table, trimmed, with the place where it stands. */
export type CsvCell = { readonly text: string; readonly place: Place }

/** A table with its head; every row has as many cells as the head. */
export type CsvTable = {
  readonly file: SourceFile
  readonly head: readonly CsvCell[]
  readonly rows: readonly (readonly CsvCell[])[]
}

/** Where each cell of a line begins: commas inside quotes do not part cells. */
function cellStarts(line: string): readonly number[] {
  const starts = [0]
  let quoted = false
  for (let i = 0; i < line.length; i++) {
    if (line[i] === '"') quoted = !quoted
    else if (line[i] === ',' && !quoted) starts.push(i + 1)
  }
  return starts
}

/**
 * Reads a table of comma-separated values (RFC 4180) whose first line names the columns. Blank
 * lines and lines that begin with # are left out.
 */
export function readCsv(file: SourceFile): Result<CsvTable> {
  const lines = file.text.replace(/^\uFEFF/, (bom) => ' '.repeat(bom.length)).split('\n')
  let offset = 0
  const read = lines.flatMap((raw) => {
    const at = offset
    offset += raw.length + 1
    const line = raw.replace(/\r$/, '')
    if (line.trim() === '' || line.trimStart().startsWith('#')) return []
    const starts = cellStarts(line)
    const cells = (csvParseRows(line)[0] ?? []).map((cell, i): CsvCell => {
      const text = cell.trim()
      const from = starts[i] ?? 0
      const lead = line.slice(from).search(/\S/)
      return {
        text,
        place: placeAt(file, at + from + Math.max(0, text === '' ? 0 : lead), text.length),
      }
    })
    return [{ cells, place: placeAt(file, at, line.length) }]
  })
  const [head, ...rows] = read
  if (!head || rows.length === 0) {
    return {
      value: undefined,
      problems: [
        problemAt(file, placeAt(file, 0, 1), 'file/empty', 'the table has no rows', {
          hint: 'the first line names the columns, each line after it is one reading',
        }),
      ],
    }
  }
  const problems = rows
    .filter((r) => r.cells.length !== head.cells.length)
    .map((r) =>
      problemAt(
        file,
        r.place,
        'schema/format',
        `${r.cells.length} cells where the head has ${head.cells.length}`,
        { hint: 'a comma inside a value needs quotes around it, such as "1,200 ft"' },
      ),
    )
  return problems.length > 0
    ? { value: undefined, problems }
    : { value: { file, head: head.cells, rows: rows.map((r) => r.cells) }, problems: [] }
}

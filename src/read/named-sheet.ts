import type { Result } from '../model/problem.ts'
import { sheetFile } from './sheet-table.ts'
import { fileProblem, type SourceFile } from './source-file.ts'
import { readWorkbook } from './workbook/read-workbook.ts'

/**
 * One sheet of a workbook as a file.
 * @param path What problems call the workbook.
 * @param name The sheet wanted, in letters of any size; the first that holds something, where none is
 *   named.
 */
export function namedSheet(
  path: string,
  bytes: Uint8Array,
  name: string | undefined,
): Result<SourceFile> {
  const { value: sheets, problems } = readWorkbook(path, bytes)
  if (!sheets) return { value: undefined, problems }
  const wanted = name?.trim().toLowerCase()
  const sheet = sheets.find((s) =>
    wanted === undefined ? s.rows.length > 0 : s.name.trim().toLowerCase() === wanted,
  )
  if (sheet) return { value: sheetFile(path, sheet), problems: [] }
  const names = sheets.map((s) => `"${s.name}"`).join(', ')
  return {
    value: undefined,
    problems: [
      name === undefined
        ? fileProblem(path, 'file/empty', 'no sheet of the workbook holds anything')
        : fileProblem(
            path,
            'ref/missing',
            `the workbook has no sheet "${name}"`,
            `it has ${names}`,
          ),
    ],
  }
}

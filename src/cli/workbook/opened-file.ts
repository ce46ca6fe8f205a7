import { stat } from 'node:fs/promises'
import path from 'node:path'
import type { TakenFile } from '../../edit/workbook/grid.ts'
import type { Result } from '../../model/problem.ts'
import { fileProblem } from '../../read/source-file.ts'
import { largestWorkbook } from '../../read/workbook/read-workbook.ts'
import { readBytes, readText } from '../load/read-text.ts'

const isFile = (file: string): Promise<boolean> =>
  stat(file).then(
    (found) => found.isFile(),
    () => false,
  )

/** A file that somebody names, anywhere on disk. @param name What problems call it. */
export async function openedFile(file: string, name: string): Promise<Result<TakenFile>> {
  if (!(await isFile(file)))
    return {
      value: undefined,
      problems: [
        fileProblem(
          name,
          'file/missing',
          `there is no file ${name} here`,
          'name the workbook (.xlsx) or table (.csv) with its folder, as it is called there; a name with spaces stands in quotes',
        ),
      ],
    }
  const root = path.dirname(file)
  if (/\.csv$/i.test(file)) {
    const text = await readText(file, name, root)
    return {
      value: text.value && { name, bytes: new Uint8Array(0), text: text.value.text },
      problems: text.problems,
    }
  }
  const { value: bytes, problems } = await readBytes(file, name, root, largestWorkbook)
  return { value: bytes && { name, bytes, text: undefined }, problems }
}

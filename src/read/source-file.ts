import type { Place, Problem, ProblemCode } from '../model/problem.ts'
import type { Sheet } from './workbook/sheet.ts'

/**
 * A text file as it was read; `path` is what problems name. The text of a sheet of a workbook is its
 * rows, a line each.
 */
export type SourceFile = { readonly path: string; readonly text: string; readonly sheet?: Sheet }

/** The line of a text that holds an offset, 1-based, with the column in characters. */
function lineColumn(text: string, offset: number): { line: number; column: number } {
  const before = text.slice(0, offset)
  const line = before.split('\n').length
  return { line, column: offset - before.lastIndexOf('\n') }
}

/** Where a stretch of a file stands. */
export function placeAt(file: SourceFile, offset: number, length: number): Place {
  return { file: file.path, ...lineColumn(file.text, offset), length: Math.max(1, length) }
}

const longestShown = 160

/** What else a problem may say; an error where nothing is said of its severity. */
export type ProblemMore = {
  readonly hint?: string | undefined
  readonly severity?: Problem['severity'] | undefined
  /** The entry that it is about, where it is not the one that stands at the place. */
  readonly path?: Problem['path']
}

/** A problem with the line of the file that it is about. */
export function problemAt(
  file: SourceFile,
  { path: standing, ...place }: Place,
  code: ProblemCode,
  message: string,
  more: ProblemMore = {},
): Problem {
  const path = more.path ?? standing
  const source = (file.text.split('\n')[place.line - 1] ?? '')
    .replace(/\r$/, '')
    .slice(0, longestShown)
  return {
    code,
    severity: more.severity ?? 'error',
    message,
    place,
    source,
    ...(path && { path }),
    ...(more.hint === undefined ? {} : { hint: more.hint }),
  }
}

/**
 * A problem with a file as a whole, which may not be there to show a line of.
 * @param file What problems call it.
 */
export const fileProblem = (
  file: string,
  code: ProblemCode,
  message: string,
  hint?: string,
): Problem =>
  problemAt({ path: file, text: '' }, { file, line: 1, column: 1, length: 1 }, code, message, {
    hint,
  })

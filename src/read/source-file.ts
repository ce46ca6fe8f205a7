import type { Place, Problem, ProblemCode } from '../model/problem.ts'
import type { Sheet } from './workbook/sheet.ts'

/**
 * A text file as it was read; `path` is what problems name. The text of a sheet of a workbook is its
 * rows, a line each.
 */
export type SourceFile = { readonly path: string; readonly text: string; readonly sheet?: Sheet }

/** Where each line of a text begins. */
function lineStarts(text: string): readonly number[] {
  const starts = [0]
  for (let at = text.indexOf('\n'); at !== -1; at = text.indexOf('\n', at + 1)) starts.push(at + 1)
  return starts
}

const known = new WeakMap<SourceFile, readonly number[]>()

/** Thousands of places may be asked for in one file: its lines are counted once. */
function startsIn(file: SourceFile): readonly number[] {
  const starts = known.get(file) ?? lineStarts(file.text)
  known.set(file, starts)
  return starts
}

/** The line of a file that holds an offset, 1-based, with the column in characters. */
function lineColumn(file: SourceFile, offset: number): { line: number; column: number } {
  const starts = startsIn(file)
  let [low, high] = [0, starts.length]
  while (high - low > 1) {
    const middle = (low + high) >> 1
    if ((starts[middle] ?? 0) <= offset) low = middle
    else high = middle
  }
  return { line: low + 1, column: offset - (starts[low] ?? 0) + 1 }
}

/** A line of a file without its end, counted from 1; nothing where there is none. */
export function lineOf(file: SourceFile, line: number): string {
  const starts = startsIn(file)
  const [from, to] = [starts[line - 1], starts[line]]
  return from === undefined ? '' : file.text.slice(from, to === undefined ? undefined : to - 1)
}

/** Where a stretch of a file stands. */
export function placeAt(file: SourceFile, offset: number, length: number): Place {
  return { file: file.path, ...lineColumn(file, offset), length: Math.max(1, length) }
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
  const source = lineOf(file, place.line).replace(/\r$/, '').slice(0, longestShown)
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

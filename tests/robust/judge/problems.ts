import { problemsText } from '../../../src/cli/problem-text.ts'
import type { Problem } from '../../../src/model/problem.ts'
import { slipIn } from './slips.ts'

const linesOf = (text: string): number => text.split('\n').length

/**
 * What is wrong with what is said of an input: a place that is none, or words of the program.
 * @param textOf The text of a file, where it is one of those that were read.
 */
export function faultsOfProblems(
  problems: readonly Problem[],
  textOf: (file: string) => string | undefined,
): readonly string[] {
  const places = problems.flatMap(({ place: { file, line, column, length }, message }) => {
    const text = textOf(file)
    const wrong = [
      ...(file === '' ? ['no file'] : []),
      ...([line, column, length].every((n) => Number.isInteger(n) && n >= 1) ? [] : ['no place']),
      ...(text !== undefined && line > linesOf(text) ? ['a line that is not there'] : []),
      ...(text !== undefined && column > (text.split('\n')[line - 1]?.length ?? 0) + 2
        ? ['a column that is not there']
        : []),
    ]
    return wrong.map((what) => `${what}: ${file}:${line}:${column} ${message}`)
  })
  const words = problems.flatMap(({ message, hint = '' }) => {
    const slip = slipIn(`${message}\n${hint}`) ?? parserWords.exec(`${message}\n${hint}`)?.[0]
    return slip === undefined ? [] : [`says "${slip}": ${message} (${hint})`]
  })
  problemsText(problems, (file) => file, true)
  return [...places, ...words]
}

/** What the libraries that read say of themselves; readers are told in our own words. */
const parserWords =
  /Invalid (?:input|key|option|string)|expected (?:string|number|object|array|boolean), received|Cannot read|is not a function|is not iterable|Unexpected (?:token|end of)|Parse error/

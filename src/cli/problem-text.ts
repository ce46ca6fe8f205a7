import { styleText } from 'node:util'
import type { Problem } from '../model/problem.ts'

type Paint = (style: 'red' | 'yellow' | 'bold' | 'dim', text: string) => string

const paint =
  (colors: boolean): Paint =>
  (style, text) =>
    colors ? styleText(style, text, { validateStream: false }) : text

/** Keeps tabs, so that the underline stands where the terminal shows the fault. */
const indentLike = (text: string): string => text.replace(/[^\t]/g, ' ')

/** One problem: `file:line:column`, what is wrong, the line itself, what was expected. */
function problemText(problem: Problem, name: string, colors: boolean): string {
  const p = paint(colors)
  const { line, column, length, cell } = problem.place
  const where = cell
    ? `${name}, sheet ${cell.sheet}, cell ${cell.name}`
    : `${name}:${line}:${column}`
  const head = `${p('bold', where)}: ${p(problem.severity === 'error' ? 'red' : 'yellow', problem.severity)}: ${problem.message} ${p('dim', `[${problem.code}]`)}`
  const lines = [head]
  if (problem.source !== undefined && problem.source.trim() !== '') {
    const gutter = `  ${line} | `
    const under = Math.max(1, Math.min(length, problem.source.length - column + 1))
    lines.push(
      `${p('dim', gutter)}${problem.source}`,
      `${' '.repeat(gutter.length - 2)}${p('dim', '| ')}${indentLike(problem.source.slice(0, column - 1))}${p('red', '^'.repeat(under))}`,
    )
  }
  if (problem.hint !== undefined) lines.push(`  ${problem.hint}`)
  return lines.join('\n')
}

/** By file, line and column; sheets of a workbook follow each other as they are told first. */
function byPlace(problems: readonly Problem[]): (a: Problem, b: Problem) => number {
  const sheets = [...new Set(problems.map(({ place }) => place.cell?.sheet))]
  const rank = new Map(sheets.map((sheet, i) => [sheet, i]))
  const of = ({ place }: Problem): number => rank.get(place.cell?.sheet) ?? 0
  return (a, b) =>
    a.place.file.localeCompare(b.place.file) ||
    of(a) - of(b) ||
    a.place.line - b.place.line ||
    a.place.column - b.place.column
}

const counted = (n: number, word: string): string => `${n} ${word}${n === 1 ? '' : 's'}`

/**
 * All problems, sorted by place, with a sum line.
 * @param nameOf What a file is called here.
 */
export function problemsText(
  problems: readonly Problem[],
  nameOf: (file: string) => string,
  colors: boolean,
): string {
  const errors = problems.filter((p) => p.severity === 'error').length
  const files = new Set(problems.map((p) => p.place.file)).size
  const sum = `${counted(errors, 'error')}, ${counted(problems.length - errors, 'warning')} in ${counted(files, 'file')}`
  return [
    ...[...problems]
      .sort(byPlace(problems))
      .map((p) => problemText(p, nameOf(p.place.file), colors)),
    sum,
  ].join('\n\n')
}

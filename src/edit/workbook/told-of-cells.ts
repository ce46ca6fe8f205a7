import { entryAbout } from '../../model/entry-about.ts'
import type { Problem } from '../../model/problem.ts'
import { fileProblem } from '../../read/source-file.ts'
import type { Field } from './fields.ts'

/** What is only so where one types the file. */
const aboutFiles: readonly (readonly [RegExp, string])[] = [
  [/^add (?:a line|to what stands in \{ \}:) "[\w-]+:" with one of: /, 'write one of: '],
  [
    /^add (?:a line|to what stands in \{ \}:) "[\w-]+:" with one or more of these in \[ \]: /,
    'write one or more of: ',
  ],
  [
    /^add (?:a line|to what stands in \{ \}:) "[\w-]+:" and behind it the value, such as /,
    'write it, such as ',
  ],
  [/^add (?:a line|to what stands in \{ \}:) "[\w-]+:" and behind it the /, 'write the '],
  [/^add (?:a line|to what stands in \{ \}:) "[\w-]+: (.*)"$/, 'write it, such as $1'],
  [/\bdelete the line\b/g, 'clear the cell'],
  [/\bor leave the line out\b/g, 'or clear the cell'],
  [/\bdelete the whole entry of this contact\b/g, 'clear the line of this contact'],
  [/\bdelete "[\w-]+: [^"]*"/g, 'clear the cell'],
  [/; (?:what it varies between|that it is not exact|that it is more) can stand behind #/g, ''],
  [/^put it in quotes: .*$/, 'set the cell to text and type it again'],
]

const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')

/** What is missing as the head of its column says it: it need not be the cell that this is told of. */
const missing = (message: string, { path }: Field): string =>
  message.replace(/^"([\w-]+)" is missing\b.*$/, (_, key: string) => {
    const about = entryAbout([...path.slice(0, -1), key])
    return `"${about?.label ?? key}" is missing`
  })

/**
 * Words of the file, as they are for a cell: what its head says, and only what belongs into it.
 * @param field The entry that stands in the cell.
 */
export const forCells = (problem: Problem, field: Field | undefined): Problem => {
  const { hint, place } = problem
  if (!place.cell) return problem
  const message = field ? missing(problem.message, field) : problem.message
  if (hint === undefined) return { ...problem, message }
  const key = field?.path.at(-1)
  const isNumber = key === 'phone' || key === 'number'
  const said = aboutFiles
    .reduce((text, [pattern, to]) => text.replace(pattern, to), hint)
    .replace(
      new RegExp(`"?\\b${escaped(key ?? '-')}: ("?)([^"]+)\\1"?`, 'g'),
      (_, __, value: string) => value,
    )
  return { ...problem, message, hint: isNumber ? said.replace(/, such as 555-\d+/, '') : said }
}

/** A file that is written so that nothing can be put into it without changing something else. */
export const unspliced = (why: string): Problem =>
  fileProblem(
    'facility.yaml',
    'facility/odd',
    `what was read cannot be put into facility.yaml: ${why}`,
    'write this entry in the file by hand, then take the workbook in again',
  )

import type { Problem } from '../../model/problem.ts'
import { fileProblem } from '../../read/source-file.ts'

/** Words of the file in a hint, as they are for a cell. */
export const forCells = (problem: Problem): Problem => {
  const { hint, place } = problem
  if (hint === undefined || !place.cell) return problem
  const said = hint
    .replace(/^add (?:a line|to what stands in \{ \}:) "[\w-]+:" with one of: /, 'write one of: ')
    .replace(/^add (?:a line|to what stands in \{ \}:) "[\w-]+: (.*)"$/, 'write it, such as $1')
    .replace(/\bdelete the line\b/g, 'clear the cell')
    .replace(/can stand behind #/g, 'can stand in a note')
  return { ...problem, hint: said }
}

/** A file that is written so that nothing can be put into it without changing something else. */
export const unspliced = (why: string): Problem =>
  fileProblem(
    'facility.yaml',
    'facility/odd',
    `what was read cannot be put into facility.yaml: ${why}`,
    'write this entry in the file by hand, then take the workbook in again',
  )

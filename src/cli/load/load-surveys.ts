import path from 'node:path'
import { readCsv } from '../../read/read-csv.ts'
import { type Facility, surveyedOval } from '../../validate/check-facility.ts'
import { checkSurvey, type Survey } from '../../validate/check-survey.ts'
import { readText } from './read-text.ts'
import type { Loaded } from './read-tree.ts'

/** Reads the tables of readings that a facility file names. */
export async function loadSurveys(root: string, shownRoot: string, { file, tree }: Facility): Promise<Loaded<readonly Survey[]>> {
  const oval = surveyedOval(file)
  const loaded = await Promise.all((file.surveys ?? []).map(async (entry, i): Promise<Loaded<Survey>> => {
    const at = tree.placeOf(['surveys', i, 'file'])
    const text = await readText(path.join(root, entry.file), path.posix.join(shownRoot, entry.file), root)
    // A file that is not there is a fault of the line that names it.
    if (!text.value) return { value: undefined, problems: text.problems.map((p) => tree.problem(at, p.code, p.message, p.hint === undefined ? {} : { hint: p.hint })), files: [] }
    const table = readCsv(text.value)
    if (!table.value || !oval) return { value: undefined, problems: table.problems, files: [text.value] }
    return { ...checkSurvey(table.value, entry.of, entry.by, at, oval), files: [text.value] }
  }))
  return { value: loaded.flatMap((l) => l.value ?? []), problems: loaded.flatMap((l) => [...l.problems]), files: loaded.flatMap((l) => l.files) }
}

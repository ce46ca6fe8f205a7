import { baseLanguage } from '../model/language.ts'
import { hasErrors, type Problem } from '../model/problem.ts'
import { checkPageTemplates } from '../render/site/check-pages.ts'
import { checkTemplates } from '../render/text/check-templates.ts'
import type { TemplateTexts } from '../render/text/templates.ts'
import type { Words } from '../validate/schemas/words.ts'
import { findingsText } from './findings-text.ts'
import { facilityFolder, projectFolders, terminalNames } from './folders.ts'
import { type ExitCode, exit, type Io } from './io.ts'
import { keptOr } from './kept/kept-results.ts'
import { loadKept } from './load/load-kept.ts'
import { loadTemplates } from './load/load-templates.ts'
import { problemsText } from './problem-text.ts'
import { styleProblems } from './style-problems.ts'

/** Holds all templates against the words that they name, unless the same ones were sound before. */
const templateProblems = (templates: TemplateTexts, words: Words): Promise<readonly Problem[]> =>
  keptOr(
    'templates',
    [JSON.stringify(templates), JSON.stringify(words)],
    () => checkTemplates(templates, words),
    (found) => found.length === 0,
  )

/** Checks the library and a facility, prints problems and findings, writes nothing. */
export async function check(folder: string | undefined, io: Io): Promise<ExitCode> {
  const folders = projectFolders()
  const root = facilityFolder(folder, io.cwd, folders)
  const loaded = await loadKept(root, folders, io)
  const { manual, library, facility, problems: faults } = loaded
  // The words are looked at here only: a manual is not held up by a long sentence. Dictionary and
  // reading grade are those of the library's own language.
  const inBase = (facility?.file.language ?? baseLanguage) === baseLanguage
  const style =
    library && inBase && !hasErrors(faults) ? await styleProblems(library, loaded, folders, io) : []
  const { templates } = await loadTemplates(folders)
  const problems = [
    ...faults,
    ...style,
    ...(library ? await templateProblems(templates, library.words) : []),
    ...checkPageTemplates(templates),
  ]
  if (problems.length > 0)
    io.err(problemsText(problems, terminalNames(root, folders, io.cwd), io.colors))
  if (hasErrors(problems) || !manual) return exit.faults
  io.out(findingsText(manual))
  return exit.fine
}

import { baseLanguage } from '../model/language.ts'
import { hasErrors } from '../model/problem.ts'
import { checkPageTemplates } from '../render/site/check-pages.ts'
import { checkTemplates } from '../render/text/check-templates.ts'
import { checkNotSaid } from '../validate/check-not-said.ts'
import { checkWords } from '../validate/check-words.ts'
import { findingsText } from './findings-text.ts'
import { facilityFolder, projectFolders, terminalNames } from './folders.ts'
import { type ExitCode, exit, type Io } from './io.ts'
import { loadKept } from './load/load-kept.ts'
import { loadTemplates } from './load/load-templates.ts'
import { readTree } from './load/read-tree.ts'
import { problemsText } from './problem-text.ts'
import { checkSpelling } from './spelling.ts'

/** Checks the library and a facility, prints problems and findings, writes nothing. */
export async function check(folder: string | undefined, io: Io): Promise<ExitCode> {
  const folders = projectFolders()
  const root = facilityFolder(folder, io.cwd, folders)
  const { manual, library, facility, problems: faults } = await loadKept(root, folders, io)
  // The words are looked at here only: a manual is not held up by a long sentence. Dictionary and
  // reading grade are those of the library's own language.
  const inBase = (facility?.file.language ?? baseLanguage) === baseLanguage
  const notSaid = await readTree(folders.content, 'not-said.yaml', 'content')
  const style =
    library && inBase && !hasErrors(faults)
      ? [
          ...checkWords(library),
          ...(notSaid.value ? checkNotSaid(library, notSaid.value) : notSaid.problems),
          ...checkSpelling(library),
        ]
      : []
  const { templates } = await loadTemplates(folders)
  const problems = [
    ...faults,
    ...style,
    ...(library ? checkTemplates(templates, library.words) : []),
    ...checkPageTemplates(templates),
  ]
  if (problems.length > 0)
    io.err(problemsText(problems, terminalNames(root, folders, io.cwd), io.colors))
  if (hasErrors(problems) || !manual) return exit.faults
  // All of it is composed, though little is shown: what cannot be would be a fault of the program.
  io.out(findingsText({ ...manual }))
  return exit.fine
}

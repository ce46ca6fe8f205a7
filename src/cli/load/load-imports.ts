import path from 'node:path'
import type { Result } from '../../model/problem.ts'
import { namedSheet } from '../../read/named-sheet.ts'
import type { Path } from '../../read/read-yaml.ts'
import type { SourceFile } from '../../read/source-file.ts'
import { largestWorkbook } from '../../read/workbook/read-workbook.ts'
import type { Facility } from '../../validate/check-facility.ts'
import { allFilesNamed, type Named, readImports } from '../../validate/imports/read-imports.ts'
import { readBytes, readText } from './read-text.ts'
import type { Loaded } from './read-tree.ts'

/** The facility folder, and what problems call it. */
export type FacilityRoot = { readonly root: string; readonly shown: string }

/** Reads a table or another file beside the facility file. */
export async function readNamed(
  { file, sheet }: Named,
  folder: FacilityRoot,
): Promise<Result<SourceFile>> {
  const [absolute, shown] = [path.join(folder.root, file), path.posix.join(folder.shown, file)]
  if (!/\.xlsx$/i.test(file)) return await readText(absolute, shown, folder.root)
  const bytes = await readBytes(absolute, shown, folder.root, largestWorkbook)
  if (!bytes.value) return { ...bytes, value: undefined }
  return namedSheet(shown, bytes.value, sheet)
}

/**
 * Reads a file that the facility file names; when it is not there or cannot be read, that is a fault
 * of the line that names it.
 */
async function loadNamed(
  entry: Named,
  at: Path,
  { tree }: Facility,
  folder: FacilityRoot,
): Promise<Loaded<SourceFile>> {
  const read = await readNamed(entry, folder)
  if (read.value) return { ...read, files: [read.value] }
  const problems = read.problems.map((p) =>
    tree.problem(tree.placeOf(at), p.code, p.message, { hint: p.hint }),
  )
  return { value: undefined, problems, files: [] }
}

/**
 * Adds to a facility what stands in the files that its file names.
 * @param date Of the manual.
 */
export async function loadImports(
  facility: Facility,
  folder: FacilityRoot,
  date: string,
): Promise<Loaded<Facility>> {
  const loaded = new Map(
    await Promise.all(
      allFilesNamed(facility).map(
        async ({ entry, at }) =>
          [at.join('.'), await loadNamed(entry, at, facility, folder)] as const,
      ),
    ),
  )
  const none: Loaded<SourceFile> = { value: undefined, problems: [], files: [] }
  const read = readImports(facility, { textOf: ({ at }) => loaded.get(at.join('.')) ?? none, date })
  return {
    value: read.facility,
    problems: read.problems,
    files: [...loaded.values()].flatMap((l) => l.files),
  }
}

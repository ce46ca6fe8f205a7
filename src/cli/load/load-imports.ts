import path from 'node:path'
import { hasErrors, type Problem, type Result } from '../../model/problem.ts'
import { namedSheet } from '../../read/named-sheet.ts'
import type { Path } from '../../read/read-yaml.ts'
import type { SourceFile } from '../../read/source-file.ts'
import { largestWorkbook } from '../../read/workbook/read-workbook.ts'
import type { Facility } from '../../validate/check-facility.ts'
import type { Imported } from '../../validate/imports/imports.ts'
import { allFilesNamed, type Named, readImports } from '../../validate/imports/read-imports.ts'
import { keptOr } from '../kept/kept-results.ts'
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

/** What is kept of files that were read. */
type KeptImports = { readonly imported: Imported; readonly problems: readonly Problem[] }

/** All that reading the files of a facility depends on. */
const partsOf = (
  facility: Facility,
  loaded: ReadonlyMap<string, Loaded<SourceFile>>,
  date: string,
): readonly string[] => {
  const { units, place } = facility.file
  const named = allFilesNamed(facility).map(({ entry, at }) => [
    entry,
    at,
    facility.tree.placeOf(at),
  ])
  return [
    JSON.stringify([named, units, place.latitude, place.longitude, date]),
    ...[...loaded.values()].flatMap(({ files }) => files.flatMap((f) => [f.path, f.text])),
  ]
}

/**
 * Adds to a facility what stands in the files that its file names, or what was found in the same files
 * before.
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
  const textOf = ({ at }: { readonly at: Path }) => loaded.get(at.join('.')) ?? none
  const make = (): KeptImports => {
    const read = readImports(facility, { textOf, date })
    return { imported: read.facility.imported, problems: read.problems }
  }
  const isSound = ({ problems }: KeptImports): boolean => !hasErrors(problems)
  const { imported, problems } =
    loaded.size > 0
      ? await keptOr('imports', partsOf(facility, loaded, date), make, isSound)
      : make()
  return {
    value: { ...facility, imported },
    problems,
    files: [...loaded.values()].flatMap((l) => l.files),
  }
}

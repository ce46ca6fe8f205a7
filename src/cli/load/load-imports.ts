import path from 'node:path'
import type { Result } from '../../model/problem.ts'
import { namedSheet } from '../../read/named-sheet.ts'
import type { Path } from '../../read/read-yaml.ts'
import type { SourceFile } from '../../read/source-file.ts'
import { largestWorkbook } from '../../read/workbook/read-workbook.ts'
import type { Facility } from '../../validate/check-facility.ts'
import type { Import } from '../../validate/imports/import.ts'
import { filesNamed, type Imported, imports } from '../../validate/imports/imports.ts'
import { readBytes, readText } from './read-text.ts'
import type { Loaded } from './read-tree.ts'

/** The facility folder, and what problems call it. */
export type FacilityRoot = { readonly root: string; readonly shown: string }

/** An entry of the facility file that names a file beside it, in a workbook perhaps a sheet. */
type Named = { readonly file: string; readonly sheet?: string | undefined }

async function readNamed(
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

/** Every file of one kind. */
async function loadKind<Entry extends { readonly file: string }, Value>(
  name: string,
  kind: Import<Entry, Value>,
  facility: Facility,
  folder: FacilityRoot,
  date: string,
): Promise<Loaded<readonly Value[]>> {
  const { units } = facility.file
  const { latitude, longitude } = facility.file.place
  const loaded = await Promise.all(
    filesNamed(facility.file, name, kind).map(async ({ entry, at }): Promise<Loaded<Value>> => {
      const source = await loadNamed(entry, at, facility, folder)
      if (!source.value) return { ...source, value: undefined }
      const context = { at: facility.tree.placeOf(at), date, units, latitude, longitude }
      return { ...kind.read(source.value, entry, context), files: source.files }
    }),
  )
  return {
    value: loaded.flatMap((l) => (l.value === undefined ? [] : [l.value])),
    problems: loaded.flatMap((l) => [...l.problems]),
    files: loaded.flatMap((l) => l.files),
  }
}

type AnyImport = Import<{ readonly file: string }, unknown>

/**
 * Adds to a facility what stands in the files that its file names.
 * @param date Of the manual.
 */
export async function loadImports(
  facility: Facility,
  folder: FacilityRoot,
  date: string,
): Promise<Loaded<Facility>> {
  const loaded = await Promise.all(
    Object.entries(imports).map(
      async ([name, kind]) =>
        // Each kind reads its own entries and nothing else; the list of them only has one type.
        [name, await loadKind(name, kind as unknown as AnyImport, facility, folder, date)] as const,
    ),
  )
  const imported = Object.fromEntries(loaded.map(([name, { value }]) => [name, value ?? []]))
  return {
    value: { ...facility, imported: imported as unknown as Imported },
    problems: loaded.flatMap(([, l]) => [...l.problems]),
    files: loaded.flatMap(([, l]) => l.files),
  }
}

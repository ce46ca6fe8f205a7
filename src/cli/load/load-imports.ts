import path from 'node:path'
import type { Path } from '../../read/read-yaml.ts'
import type { SourceFile } from '../../read/source-file.ts'
import type { Facility } from '../../validate/check-facility.ts'
import type { Import } from '../../validate/imports/import.ts'
import { type Imported, imports } from '../../validate/imports/imports.ts'
import { readText } from './read-text.ts'
import type { Loaded } from './read-tree.ts'

/** The facility folder, and what problems call it. */
export type FacilityRoot = { readonly root: string; readonly shown: string }

/**
 * Reads a file that the facility file names; when it is not there, that is a fault of the line that
 * names it.
 */
async function loadNamed(
  name: string,
  at: Path,
  { tree }: Facility,
  { root, shown }: FacilityRoot,
): Promise<Loaded<SourceFile>> {
  const text = await readText(path.join(root, name), path.posix.join(shown, name), root)
  if (text.value) return { ...text, files: [text.value] }
  const problems = text.problems.map((p) =>
    tree.problem(tree.placeOf(at), p.code, p.message, p.hint === undefined ? {} : { hint: p.hint }),
  )
  return { value: undefined, problems, files: [] }
}

/** Every file of one kind. */
async function loadKind<Entry, Value>(
  kind: Import<Entry, Value>,
  facility: Facility,
  folder: FacilityRoot,
): Promise<Loaded<readonly Value[]>> {
  const loaded = await Promise.all(
    kind.named(facility.file).map(async ({ name, at, entry }): Promise<Loaded<Value>> => {
      const source = await loadNamed(name, at, facility, folder)
      if (!source.value) return { ...source, value: undefined }
      const place = facility.tree.placeOf(at)
      return { ...kind.read(source.value, entry, facility.file, place), files: source.files }
    }),
  )
  return {
    value: loaded.flatMap((l) => (l.value === undefined ? [] : [l.value])),
    problems: loaded.flatMap((l) => [...l.problems]),
    files: loaded.flatMap((l) => l.files),
  }
}

/** Adds to a facility what stands in the files that its file names. */
export async function loadImports(
  facility: Facility,
  folder: FacilityRoot,
): Promise<Loaded<Facility>> {
  const loaded = await Promise.all(
    Object.entries(imports).map(
      async ([name, kind]) =>
        // Each kind reads its own entries and nothing else; the list of them only has one type.
        [name, await loadKind(kind as Import<unknown, unknown>, facility, folder)] as const,
    ),
  )
  const imported = Object.fromEntries(loaded.map(([name, { value }]) => [name, value ?? []]))
  return {
    value: { ...facility, imported: imported as unknown as Imported },
    problems: loaded.flatMap(([, l]) => [...l.problems]),
    files: loaded.flatMap(([, l]) => l.files),
  }
}

import type { Place, Problem, Result } from '../../model/problem.ts'
import type { Path } from '../../read/read-yaml.ts'
import type { SourceFile } from '../../read/source-file.ts'
import type { Facility } from '../check-facility.ts'
import type { Import, ImportContext } from './import.ts'
import { filesNamed, type Imported, imports } from './imports.ts'

type AnyImport = Import<{ readonly file: string }, unknown>

// Each kind reads its own entries and nothing else; the list of them only has one type.
const kinds = Object.entries(imports) as unknown as readonly (readonly [string, AnyImport])[]

/** An entry of the facility file that names a file beside it, in a workbook perhaps a sheet. */
export type Named = { readonly file: string; readonly sheet?: string | undefined }

/** Every file that a facility names, and where. */
export const allFilesNamed = ({
  file,
}: Facility): readonly { readonly entry: Named; readonly at: Path }[] =>
  kinds.flatMap(([name, kind]) => filesNamed(file, name, kind))

/** The text of a file that a facility names, or what is wrong with the line that names it. */
export type TextNamed = (named: {
  readonly entry: Named
  /** The entry that names it, and where it stands. */
  readonly at: Path
  readonly place: Place
}) => Result<SourceFile>

const known = new WeakMap<SourceFile, Map<string, Result<unknown>>>()

/** What a file says, read once for all that it is read against. */
function readOnce(
  [name, kind]: readonly [string, AnyImport],
  source: SourceFile,
  ...[entry, context]: [Named, ImportContext]
): Result<unknown> {
  const all = known.get(source) ?? new Map<string, Result<unknown>>()
  known.set(source, all)
  const key = JSON.stringify([name, entry, context])
  const read = all.get(key) ?? kind.read(source, entry, context)
  all.set(key, read)
  return read
}

/** Every file of one kind. */
function readKind(
  name: string,
  kind: AnyImport,
  { file, tree }: Facility,
  { textOf, date }: { readonly textOf: TextNamed; readonly date: string },
): Result<readonly unknown[]> {
  const { units } = file
  const { latitude, longitude } = file.place
  const read = filesNamed(file, name, kind).map(({ entry, at }): Result<unknown> => {
    const named = tree.placeOf(at)
    const source = textOf({ entry, at, place: named })
    if (!source.value) return source
    const { value, problems } = readOnce([name, kind], source.value, entry, {
      at: named,
      date,
      units,
      latitude,
      longitude,
    })
    // A fault in a table belongs to the entry that names it.
    return {
      value,
      problems: problems.map((p) => (named.path && !p.path ? { ...p, path: named.path } : p)),
    }
  })
  return {
    value: read.flatMap((r) => (r.value === undefined ? [] : [r.value])),
    problems: read.flatMap((r) => [...r.problems]),
  }
}

/**
 * Adds to a facility what stands in the files that its file names.
 * @param given.date Of the manual.
 */
export function readImports(
  facility: Facility,
  given: { readonly textOf: TextNamed; readonly date: string },
): { readonly facility: Facility; readonly problems: readonly Problem[] } {
  const read = kinds.map(([name, kind]) => [name, readKind(name, kind, facility, given)] as const)
  const imported = Object.fromEntries(read.map(([name, { value }]) => [name, value ?? []]))
  return {
    facility: { ...facility, imported: imported as unknown as Imported },
    problems: read.flatMap(([, r]) => [...r.problems]),
  }
}

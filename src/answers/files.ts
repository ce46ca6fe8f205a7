import type { Problem, Result } from '../model/problem.ts'
import { namedSheet } from '../read/named-sheet.ts'
import type { SourceTree } from '../read/read-yaml.ts'
import type { SourceFile } from '../read/source-file.ts'
import type { Named, TextNamed } from '../validate/imports/read-imports.ts'

/** Files of a facility folder by their path in it; workbooks as their bytes. */
export type Files = ReadonlyMap<string, string | Uint8Array>

type Kept = { readonly content: string | Uint8Array; readonly read: Result<SourceFile> }

/** Reads the tables that a facility file names, each once for as long as it stays the same. */
export function tablesOf(): (files: Files, tree: SourceTree) => TextNamed {
  const kept = new Map<string, Kept>()
  const readOf = ({ file, sheet }: Named, content: string | Uint8Array): Result<SourceFile> => {
    const key = JSON.stringify([file, sheet])
    const known = kept.get(key)
    if (known?.content === content) return known.read
    const read =
      typeof content === 'string'
        ? { value: { path: file, text: content }, problems: [] }
        : namedSheet(file, content, sheet)
    kept.set(key, { content, read })
    return read
  }
  return (files, tree) =>
    ({ entry, place }) => {
      const content = files.get(entry.file)
      const refused = (p: Pick<Problem, 'code' | 'message' | 'hint'>): Problem =>
        tree.problem(place, p.code, p.message, { hint: p.hint })
      if (content !== undefined) {
        const { value, problems } = readOf(entry, content)
        return { value, problems: problems.map(refused) }
      }
      const code = 'file/missing'
      const hint = 'put it into the folder of the facility file'
      const message = `there is no file ${entry.file}`
      return { value: undefined, problems: [refused({ code, message, hint })] }
    }
}

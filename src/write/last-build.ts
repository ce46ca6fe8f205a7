import { readFile } from 'node:fs/promises'
import path from 'node:path'
import * as z from 'zod'
import type { OutputFile } from '../model/output-file.ts'

const made = z.object({ revision: z.string(), date: z.string() })
export type MadeAt = z.output<typeof made>

const record = z.object({
  files: z.array(z.object({ path: z.string() })),
  binder: z.looseObject({ revision: z.looseObject(made.shape) }).optional(),
  sheets: z.array(z.looseObject({})).optional(),
  fieldBook: z.object({ pages: z.number() }).optional(),
  older: made.optional(),
})

/** What the record of the last build says of its own files. */
export type LastBuild = {
  /** Paths below the folder, with forward slashes. */
  readonly files: ReadonlySet<string>
  /** The revision that its printed files are of; undefined where there are none. */
  readonly printed: MadeAt | undefined
  /** What it knew of its printed files, to be said again where they stay. */
  readonly binder: object | undefined
  readonly sheets: readonly object[] | undefined
  readonly fieldBook: { readonly pages: number } | undefined
}

/** The build that lies in a folder; undefined where none does, or one of another version. */
export async function lastBuild(target: string): Promise<LastBuild | undefined> {
  try {
    const found = record.parse(JSON.parse(await readFile(path.join(target, 'build.json'), 'utf8')))
    const { binder, sheets, fieldBook } = found
    const files = new Set([...found.files.map((f) => f.path), 'build.json'])
    return {
      files,
      printed:
        found.older ??
        (binder && { revision: binder.revision.revision, date: binder.revision.date }),
      binder,
      sheets,
      fieldBook,
    }
  } catch {
    return undefined
  }
}

/** The printed files of the last build that still lie in its folder. */
export async function printedFiles(
  target: string,
  last: LastBuild,
): Promise<readonly OutputFile[]> {
  const names = [...last.files].filter((file) => file.endsWith('.pdf'))
  const read = await Promise.all(
    names.map(async (name): Promise<OutputFile[]> => {
      const data = await readFile(path.join(target, name)).catch(() => undefined)
      return data ? [{ path: name, data }] : []
    }),
  )
  return read.flat()
}

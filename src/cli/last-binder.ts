import { readFile } from 'node:fs/promises'
import path from 'node:path'
import * as z from 'zod'

const laidPages = z.object({
  revision: z.string(),
  date: z.string(),
  pages: z.array(z.object({ label: z.string(), print: z.string() })),
})

const binder = z.object({
  labels: z.record(z.string(), z.string()),
  pages: z.record(z.string(), z.number()),
  revision: laidPages,
  before: laidPages.optional(),
})

/**
 * What the record of the last build of the same facility says of its binder: it saves prints, and
 * tells which pages are new.
 */
export async function lastBinder(target: string): Promise<z.output<typeof binder> | undefined> {
  try {
    const record: unknown = JSON.parse(await readFile(path.join(target, 'build.json'), 'utf8'))
    return z.object({ binder }).parse(record).binder
  } catch {
    // No build before this one, or one by another version: the numbers are found by printing.
    return undefined
  }
}

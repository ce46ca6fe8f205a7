import { readFile } from 'node:fs/promises'
import path from 'node:path'
import { parse } from 'yaml'
import * as z from 'zod'
import type { Problem } from '../../src/model/problem.ts'
import { testsFolder } from './demo.ts'

const edits = {
  name: z.string(),
  replace: z.record(z.string(), z.string()).default({}),
  add: z.string().default(''),
  text: z.string().optional(),
}

type Edits = { replace: Record<string, string>; add: string; text?: string | undefined }

/**
 * A text with the changes of a case.
 * @throws Error when a case exchanges what is not there.
 */
export function edited(start: string, { replace, add, text }: Edits): string {
  let changed = text ?? start
  for (const [from, to] of Object.entries(replace)) {
    if (!changed.includes(from)) throw new Error(`nothing to exchange: ${from}`)
    changed = changed.replace(from, () => to)
  }
  return changed + add
}

const table = async (name: string): Promise<unknown> =>
  parse(await readFile(path.join(testsFolder, 'fixtures', 'bad-input', name), 'utf8'))

const facilityCases = z.strictObject({
  start: z.string(),
  cases: z.array(
    z.strictObject({ ...edits, expect: z.array(z.string()).min(1), says: z.string().default('') }),
  ),
})

/** Faults of a facility file, and where each must be reported. */
export async function badFacilities() {
  const { start, cases } = facilityCases.parse(await table('facility.yaml'))
  return { start, cases: cases.map((c) => ({ ...c, text: edited(start, c) })) }
}

const buildCases = z.strictObject({
  cases: z.array(
    z.strictObject({
      ...edits,
      edit: z.enum(['facility.yaml', 'own.yaml']),
      write: z.record(z.string(), z.string()).default({}),
      says: z.array(z.string()).min(1),
    }),
  ),
})

/** Faults that stop a build, and what must be said of each. */
export const badBuilds = async () => buildCases.parse(await table('builds.yaml')).cases

const tableCases = z.strictObject({
  start: z.string(),
  cases: z.array(z.strictObject({ ...edits, expect: z.array(z.string()).min(1) })),
})
const tableKinds = z.strictObject({
  'cushion-depth': tableCases,
  'surface-level': tableCases,
  weather: tableCases,
})

/** Faults of tables of one kind, and where each must be reported. */
export async function badTables(kind: keyof z.infer<typeof tableKinds>) {
  const { start, cases } = tableKinds.parse(await table('tables.yaml'))[kind]
  return { start, cases: cases.map((c) => ({ ...c, text: edited(start, c) })) }
}

/** Where problems are reported, sorted, in the words of the tables. */
export const placesOf = (problems: readonly Problem[]): readonly string[] =>
  problems.map((p) => `${p.code} ${p.place.line}:${p.place.column}`).sort()

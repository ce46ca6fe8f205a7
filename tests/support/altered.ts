import { cp, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises'
import os from 'node:os'
import path from 'node:path'
import { type Document, parse, parseDocument } from 'yaml'
import * as z from 'zod'
import { loadFacility } from '../../src/cli/load/load-facility.ts'
import { composeFindings } from '../../src/compose/findings.ts'
import { placeProblems } from '../../src/compute/place-problems.ts'
import { hasErrors, type Problem } from '../../src/model/problem.ts'
import { contextFor } from '../compose/support/context.ts'
import { date, demoFolder, demos, testsFolder } from './demo.ts'

/** What is changed in a demo, and what must be said of it. */
const alteration = z.strictObject({
  /** The path of the entry that is written over, with dots, or taken away without `is`. */
  at: z.string().optional(),
  is: z.unknown().optional(),
  /** Two entries that change places. */
  swap: z.tuple([z.string(), z.string()]).optional(),
  /** The path of an entry of a list that is written there once more. */
  copy: z.string().optional(),
  /** A table beside the facility file, with words exchanged in it. */
  table: z.string().optional(),
  replace: z.record(z.string(), z.string()).optional(),
  /** Words of a problem that must be reported, or a finding that must appear. */
  says: z.string().optional(),
  finding: z.string().optional(),
})
type Alteration = z.infer<typeof alteration>

/** Alterations of the demos that must not be used in silence. */
export async function alterations() {
  const file = path.join(testsFolder, 'fixtures', 'altered-facilities.yaml')
  const table = z
    .record(z.enum(demos), z.array(alteration))
    .parse(parse(await readFile(file, 'utf8')))
  return demos.flatMap((demo) => table[demo].map((a) => ({ demo, ...a })))
}

const pathOf = (dotted: string): (string | number)[] =>
  dotted.split('.').map((step) => (/^\d+$/.test(step) ? Number(step) : step))

function alterFile(doc: Document, { at, is, swap, copy }: Alteration): void {
  if (at !== undefined && is === undefined) {
    if (!doc.deleteIn(pathOf(at))) throw new Error(`nothing at ${at}`)
  } else if (at !== undefined) doc.setIn(pathOf(at), doc.createNode(is))
  if (swap) {
    const [a, b] = [doc.getIn(pathOf(swap[0])), doc.getIn(pathOf(swap[1]))]
    if (a === undefined || b === undefined) throw new Error(`nothing at ${swap.join(' or ')}`)
    doc.setIn(pathOf(swap[0]), b)
    doc.setIn(pathOf(swap[1]), a)
  }
  if (copy !== undefined) doc.addIn(pathOf(copy).slice(0, -1), doc.getIn(pathOf(copy)))
}

function alterTable(text: string, { replace = {} }: Alteration): string {
  let changed = text
  for (const [from, to] of Object.entries(replace)) {
    if (!changed.includes(from)) throw new Error(`nothing to exchange: ${from}`)
    changed = changed.replaceAll(from, to)
  }
  return changed
}

/** All that is said of a facility. */
type Said = {
  readonly problems: readonly Problem[]
  /** Ids of its findings. */
  readonly findings: readonly string[]
}

async function saidIn(root: string, { says }: Alteration = {}): Promise<Said> {
  const { facility, problems } = await loadFacility(
    { root, shown: '' },
    { today: date, wanted: undefined },
  )
  const told = says !== undefined && problems.some((p) => p.message.includes(says))
  if (told || !facility || hasErrors(problems)) return { problems, findings: [] }
  const text = await readFile(path.join(root, 'facility.yaml'), 'utf8')
  const context = await contextFor(text, { ...facility.imported, tests: facility.tests })
  return {
    problems: [...problems, ...placeProblems(facility, context)],
    findings: composeFindings(context).map((f) => f.id),
  }
}

/** What is said of a demo as it stands. */
export const saidOf = (demo: string): Promise<Said> => saidIn(demoFolder(demo))

/** What is said of a demo with an alteration. */
export async function saidOfAltered(demo: string, altered: Alteration): Promise<Said> {
  const folder = await mkdtemp(path.join(os.tmpdir(), 'altered-'))
  try {
    await cp(demoFolder(demo), folder, { recursive: true })
    const file = path.join(folder, altered.table ?? 'facility.yaml')
    const text = await readFile(file, 'utf8')
    if (altered.table === undefined) {
      const doc = parseDocument(text)
      alterFile(doc, altered)
      await writeFile(file, String(doc))
    } else await writeFile(file, alterTable(text, altered))
    return await saidIn(folder, altered)
  } finally {
    await rm(folder, { recursive: true, force: true })
  }
}

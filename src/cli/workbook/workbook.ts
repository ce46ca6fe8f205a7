import { mkdir } from 'node:fs/promises'
import path from 'node:path'
import { createInterface } from 'node:readline/promises'
import type { TakenFile } from '../../edit/workbook/grid.ts'
import { layOut } from '../../edit/workbook/lay-out.ts'
import { type Standing, type TakenIn, takeIn } from '../../edit/workbook/take-in.ts'
import { hasErrors, type Problem, type Result } from '../../model/problem.ts'
import type { UnitSystem } from '../../model/quantity/kinds.ts'
import { largestWorkbook } from '../../read/workbook/read-workbook.ts'
import { facilityWorkbook } from '../../render/workbook/facility-workbook.ts'
import { writeFiles } from '../../write/write-files.ts'
import { type ExitCode, exit, type Io } from '../io.ts'
import { readBytes, readText } from '../load/read-text.ts'
import { problemsText } from '../problem-text.ts'
import { facilitySchemaFile } from '../schemas.ts'
import { unwritable } from '../user-fault.ts'
import { baseFor, standingIn } from './standing.ts'
import { changesText, countedText } from './taken-text.ts'

export type WorkbookOptions = { readonly yes?: boolean; readonly units?: string }

/** What the workbook of a facility folder is called. */
const workbookName = 'facility.xlsx'

/** A file that somebody names, anywhere on disk. */
async function taken(file: string, name: string): Promise<Result<TakenFile>> {
  const root = path.dirname(file)
  if (/\.csv$/i.test(file)) {
    const text = await readText(file, name, root)
    return {
      value: text.value && { name, bytes: new Uint8Array(0), text: text.value.text },
      problems: text.problems,
    }
  }
  const { value: bytes, problems } = await readBytes(file, name, root, largestWorkbook)
  return { value: bytes && { name, bytes, text: undefined }, problems }
}

const shownFrom = (io: Io, file: string): string => path.relative(io.cwd, file) || '.'

/** Units of the facility, those that are asked for, or those of the United States. */
function systemOf(standing: Standing, asked: string | undefined): UnitSystem {
  const said = (standing.tree?.data as { readonly units?: unknown } | undefined)?.units
  return (said ?? asked) === 'metric' ? 'metric' : 'us'
}

/** Whether a workbook that is there holds nothing that the facility does not. */
async function isTakenIn(file: string, standing: Standing): Promise<boolean> {
  const there = await taken(file, workbookName)
  if (!there.value) return there.problems[0]?.code === 'file/missing'
  const { asked, tables, problems } = takeIn(there.value, standing)
  return asked.length === 0 && tables.length === 0 && !hasErrors(problems)
}

async function make(root: string, standing: Standing, system: UnitSystem): Promise<void> {
  const data = await facilityWorkbook(layOut(baseFor(standing), system))
  await writeFiles(root, [{ path: workbookName, data }])
}

async function makeFor(
  root: string,
  standing: Standing,
  { units }: WorkbookOptions,
  io: Io,
): Promise<ExitCode> {
  const shown = shownFrom(io, root)
  const file = path.join(root, workbookName)
  if (!(await isTakenIn(file, standing))) {
    io.err(
      [
        `${path.join(shown, workbookName)} holds something that the facility does not say yet, and it was left alone.`,
        `Take it in:  npm run workbook -- ${shown} ${path.join(shown, workbookName)}`,
        'or give it another name, then make a new one.',
      ].join('\n'),
    )
    return exit.usage
  }
  await mkdir(root, { recursive: true })
  await make(root, standing, systemOf(standing, units))
  io.out(
    [
      standing.tree
        ? `${path.join(shown, workbookName)} is there, with what the facility says now.`
        : `${path.join(shown, workbookName)} is there, blank.`,
      'Fill in the white cells and save it; then:',
      `  npm run workbook -- ${shown} ${path.join(shown, workbookName)}`,
    ].join('\n'),
  )
  return exit.fine
}

/** Asks whether what was shown is to be entered; no where there is nobody to ask. */
async function isWanted({ yes }: WorkbookOptions, io: Io): Promise<boolean> {
  if (yes === true) return true
  if (!io.terminal || process.stdin.isTTY !== true) {
    io.err('Nothing was changed. With --yes behind the command it is entered.')
    return false
  }
  const lines = createInterface({ input: process.stdin, output: process.stderr })
  try {
    const said = (await lines.question('Enter this? [yes/no] ')).trim()
    if (/^y/i.test(said)) return true
    io.err('Nothing was changed.')
    return false
  } finally {
    lines.close()
  }
}

function show(found: TakenIn, name: string, nameOf: (file: string) => string, io: Io): void {
  if (found.problems.length > 0) io.err(problemsText(found.problems, nameOf, io.colors))
  io.out([`${name}:`, ...countedText(found.counted)].join('\n'))
  if (found.text === undefined) return
  const changes = changesText(found)
  io.out(
    changes.length === 0
      ? 'The facility says all of this already.'
      : ['It would change:', ...changes].join('\n'),
  )
}

async function enter(root: string, standing: Standing, found: TakenIn): Promise<void> {
  await mkdir(root, { recursive: true })
  await writeFiles(root, [
    ...found.tables.map(({ file, text }) => ({ path: file, data: text })),
    ...(standing.tree ? [] : [facilitySchemaFile()]),
    { path: 'facility.yaml', data: found.text ?? '' },
  ])
}

async function takeFrom(
  root: string,
  file: string,
  standing: Standing,
  options: WorkbookOptions,
  io: Io,
): Promise<ExitCode> {
  const name = path.basename(file)
  const nameOf = (shown: string): string =>
    shown === name ? shownFrom(io, file) : shownFrom(io, path.join(root, shown))
  const tell = (problems: readonly Problem[]): ExitCode => {
    io.err(problemsText(problems, nameOf, io.colors))
    return exit.faults
  }
  const opened = await taken(file, name)
  if (!opened.value) return tell(opened.problems)
  const found = takeIn(opened.value, standing)
  show(found, shownFrom(io, file), nameOf, io)
  const faulty = hasErrors(found.problems)
  if (found.text === undefined) {
    io.err('Nothing was changed: mend what is told above first.')
    return exit.faults
  }
  if (found.asked.length + found.tables.length === 0) return faulty ? exit.faults : exit.fine
  if (!(await isWanted(options, io))) return faulty ? exit.faults : exit.fine
  await enter(root, standing, found)
  const shown = shownFrom(io, root)
  const isOwn = path.resolve(file) === path.join(root, workbookName) && !faulty
  // What is in it was taken in, so that the next change is told from this one.
  const after = isOwn ? (await standingIn(root, io.today)).standing : undefined
  if (after) await make(root, after, systemOf(after, undefined))
  io.out(
    [
      faulty ? 'Entered, but for what is told above.' : 'Entered.',
      ...(after
        ? [`${workbookName} was made anew; if it is open, close it and open it again.`]
        : []),
      'Then:',
      `  npm run check -- ${shown}`,
      `  npm run manual -- ${shown}`,
    ].join('\n'),
  )
  return faulty ? exit.faults : exit.fine
}

/**
 * Makes the workbook to fill in for a facility folder; or takes a workbook or table in: shows what was
 * read and what it would change, and enters it when told to.
 */
export async function workbook(
  folder: string,
  file: string | undefined,
  options: WorkbookOptions,
  io: Io,
): Promise<ExitCode> {
  if (options.units !== undefined && !/^(us|metric)$/.test(options.units)) {
    io.err('--units is us or metric')
    return exit.usage
  }
  const root = path.resolve(io.cwd, folder)
  const { standing, problems } = await standingIn(root, io.today)
  if (!standing) {
    io.err(problemsText(problems, (f) => shownFrom(io, path.join(root, f)), io.colors))
    return exit.faults
  }
  const closed = await unwritable(root)
  if (closed !== undefined) {
    io.err(closed)
    return exit.unwritable
  }
  return file === undefined
    ? makeFor(root, standing, options, io)
    : takeFrom(root, path.resolve(io.cwd, file), standing, options, io)
}

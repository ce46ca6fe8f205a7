import { mkdir, readFile } from 'node:fs/promises'
import path from 'node:path'
import { createInterface } from 'node:readline/promises'
import { baseAfter } from '../../edit/workbook/base-after.ts'
import { type Standing, type TakenIn, takeIn } from '../../edit/workbook/take-in.ts'
import { hasErrors } from '../../model/problem.ts'
import { withBase } from '../../render/workbook/with-base.ts'
import { writeFiles } from '../../write/write-files.ts'
import { inCommand } from '../in-command.ts'
import { type ExitCode, exit, type Io } from '../io.ts'
import { problemsText } from '../problem-text.ts'
import { facilitySchemaFile } from '../schemas.ts'
import { userFault } from '../user-fault.ts'
import { openedFile } from './opened-file.ts'
import { baseFor, standingIn } from './standing.ts'
import { changesText, countedText, neededText } from './taken-text.ts'

/** A file to take into a facility folder. */
type Taking = {
  readonly root: string
  readonly file: string
  readonly standing: Standing
  readonly io: Io
}

const shownFrom = (io: Io, file: string): string => path.relative(io.cwd, file) || '.'

/** Asks whether what was shown is to be entered; no where there is nobody to ask. */
async function isWanted(yes: boolean, io: Io): Promise<boolean> {
  if (yes) return true
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

function show(found: TakenIn, { io, file, root }: Taking): void {
  const name = path.basename(file)
  const nameOf = (shown: string): string =>
    shown === name ? shownFrom(io, file) : shownFrom(io, path.join(root, shown))
  if (found.problems.length > 0) io.err(problemsText(found.problems, nameOf, io.colors))
  if (found.counted.length > 0)
    io.out([`${shownFrom(io, file)}:`, ...countedText(found.counted)].join('\n'))
  if (found.text === undefined) return
  const changes = changesText(found)
  const isRead = found.counted.some(({ read }) => read > 0)
  io.out(
    changes.length > 0
      ? ['It would change:', ...changes].join('\n')
      : !isRead
        ? 'Nothing in it could be read.'
        : found.problems.length > 0
          ? 'The facility says all else that is in it already.'
          : 'The facility says all of this already.',
  )
}

async function enter({ root, standing }: Taking, found: TakenIn): Promise<void> {
  await mkdir(root, { recursive: true })
  await writeFiles(root, [
    ...found.tables.map(({ file, text }) => ({ path: file, data: text })),
    ...(standing.tree ? [] : [facilitySchemaFile()]),
    { path: 'facility.yaml', data: found.text ?? '' },
  ])
}

/**
 * Notes in a workbook what it and the facility agree about by now, so that the next change of either
 * is told from this one. @returns What is said of it.
 */
async function note({ root, file, io }: Taking, found: TakenIn): Promise<readonly string[]> {
  if (!found.madeOf) return []
  const { standing } = await standingIn(root, io.today)
  if (!standing) return []
  const base = baseAfter(found.found, found.madeOf, baseFor(standing))
  if (JSON.stringify(base) === JSON.stringify(found.madeOf)) return []
  const data = withBase(await readFile(file), base)
  if (!data) return []
  const name = path.basename(file)
  try {
    await writeFiles(path.dirname(file), [{ path: name, data }])
    return [`This was noted in ${name}; if it is open, close it without saving and open it again.`]
  } catch (error) {
    if (userFault(error) === undefined) throw error
    return [`It could not be noted in ${name} itself: close it, then take it in once more.`]
  }
}

/** Takes a workbook or table in: shows what it says, and enters it when told to. */
export async function takeWorkbook(taking: Taking, yes: boolean): Promise<ExitCode> {
  const { root, file, standing, io } = taking
  const opened = await openedFile(file, path.basename(file))
  if (!opened.value) {
    io.err(problemsText(opened.problems, () => shownFrom(io, file), io.colors))
    return exit.faults
  }
  const found = takeIn(opened.value, standing)
  show(found, taking)
  if (found.text === undefined) {
    io.err(neededText(found).join('\n'))
    return exit.faults
  }
  const faulty = hasErrors(found.problems)
  const code = faulty ? exit.faults : exit.fine
  if (found.asked.length + found.tables.length === 0) {
    await note(taking, found)
    return code
  }
  if (!(await isWanted(yes, io))) return code
  await enter(taking, found)
  const shown = inCommand(shownFrom(io, root))
  io.out(
    [
      faulty ? 'Entered, but for what is told above.' : 'Entered.',
      ...(await note(taking, found)),
      'Then:',
      `  npm run check -- ${shown}`,
      `  npm run manual -- ${shown}`,
    ].join('\n'),
  )
  return code
}

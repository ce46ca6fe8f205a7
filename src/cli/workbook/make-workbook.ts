import { mkdir, readdir, readFile, rename } from 'node:fs/promises'
import path from 'node:path'
import { layOut } from '../../edit/workbook/lay-out.ts'
import { type Standing, takeIn } from '../../edit/workbook/take-in.ts'
import { hasErrors } from '../../model/problem.ts'
import type { UnitSystem } from '../../model/quantity/kinds.ts'
import { facilityWorkbook } from '../../render/workbook/facility-workbook.ts'
import { writeFiles } from '../../write/write-files.ts'
import { inCommand } from '../in-command.ts'
import { type ExitCode, exit, type Io } from '../io.ts'
import { openedFile } from './opened-file.ts'
import { baseFor } from './standing.ts'

/** What the workbook of a facility folder is called. */
const workbookName = 'facility.xlsx'

/** Units of the facility, those that are asked for, or those of the United States. */
function systemOf(standing: Standing, asked: string | undefined): UnitSystem {
  const said = (standing.tree?.data as { readonly units?: unknown } | undefined)?.units
  return (said ?? asked) === 'metric' ? 'metric' : 'us'
}

/** Whether a workbook that is there holds nothing that the facility does not. */
async function isTakenIn(file: string, standing: Standing): Promise<boolean> {
  const there = await openedFile(file, workbookName)
  if (!there.value) return there.problems[0]?.code === 'file/missing'
  const { asked, tables, problems } = takeIn(there.value, standing)
  return asked.length === 0 && tables.length === 0 && !hasErrors(problems)
}

/** A name for the workbook that was there: remarks and sheets of its owner stay in it. */
function nameBefore(names: readonly string[], today: string): string {
  for (let n = 1; ; n++) {
    const name = `facility (before ${today}${n === 1 ? '' : ` ${n}`}).xlsx`
    if (!names.includes(name)) return name
  }
}

/** Puts a workbook in place of the one that is there, which is kept where it differs. */
async function replace(root: string, data: Uint8Array, today: string): Promise<string | undefined> {
  const file = path.join(root, workbookName)
  const there = await readFile(file).catch(() => undefined)
  const isSame = there !== undefined && Buffer.compare(there, data) === 0
  if (isSame) return undefined
  const kept = there && nameBefore(await readdir(root), today)
  if (kept !== undefined) await rename(file, path.join(root, kept))
  await writeFiles(root, [{ path: workbookName, data }])
  return kept
}

/** Makes the workbook to fill in for a facility folder. @param root The folder. @param shown How it is called. */
export async function makeWorkbook(
  root: string,
  shown: string,
  standing: Standing,
  units: string | undefined,
  io: Io,
): Promise<ExitCode> {
  const name = path.join(shown, workbookName)
  const taking = `npm run workbook -- ${inCommand(shown)} ${inCommand(name)}`
  if (!(await isTakenIn(path.join(root, workbookName), standing))) {
    io.err(
      [
        `${name} holds something that the facility does not say yet, and it was left alone.`,
        `Take it in:  ${taking}`,
        'or give it another name, then make a new one.',
      ].join('\n'),
    )
    return exit.usage
  }
  await mkdir(root, { recursive: true })
  const data = await facilityWorkbook(
    layOut(baseFor(standing), systemOf(standing, units), standing.procedures),
  )
  const kept = await replace(root, data, io.today)
  io.out(
    [
      standing.tree
        ? `${name} is there, with what the facility says now.`
        : `${name} is there, blank.`,
      ...(kept === undefined ? [] : [`The one that was there is kept as "${kept}".`]),
      'Fill in the white cells and save it; then:',
      `  ${taking}`,
    ].join('\n'),
  )
  return exit.fine
}

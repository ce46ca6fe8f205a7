import path from 'node:path'
import { type ExitCode, exit, type Io } from '../io.ts'
import { problemsText } from '../problem-text.ts'
import { unwritable } from '../user-fault.ts'
import { makeWorkbook } from './make-workbook.ts'
import { standingIn } from './standing.ts'
import { takeWorkbook } from './take-workbook.ts'

export type WorkbookOptions = { readonly yes?: boolean; readonly units?: string }

/** What is wrong with the command; undefined where it can be followed. */
function misunderstood(folder: string | undefined, { units }: WorkbookOptions): string | undefined {
  if (units !== undefined && !/^(us|metric)$/.test(units)) return '--units is us or metric'
  return folder === undefined
    ? [
        'Name the folder of your fair; it need not be there yet:',
        '  npm run workbook -- my-fair                      makes my-fair/facility.xlsx to fill in',
        '  npm run workbook -- my-fair my-fair/facility.xlsx   takes it in when it is filled',
      ].join('\n')
    : undefined
}

/**
 * Makes the workbook to fill in for a facility folder; or takes a workbook or table in: shows what was
 * read and what it would change, and enters it when told to.
 */
export async function workbook(
  folder: string | undefined,
  file: string | undefined,
  options: WorkbookOptions,
  io: Io,
): Promise<ExitCode> {
  const wrong = misunderstood(folder, options)
  if (wrong !== undefined || folder === undefined) {
    io.err(wrong ?? '')
    return exit.usage
  }
  const root = path.resolve(io.cwd, folder)
  const shownFrom = (name: string): string => path.relative(io.cwd, name) || '.'
  const { standing, problems } = await standingIn(root, io.today)
  if (!standing) {
    io.err(problemsText(problems, (f) => shownFrom(path.join(root, f)), io.colors))
    return exit.faults
  }
  const closed = await unwritable(root)
  if (closed !== undefined) {
    io.err(closed)
    return exit.unwritable
  }
  return file === undefined
    ? makeWorkbook(root, shownFrom(root), standing, options.units, io)
    : takeWorkbook({ root, file: path.resolve(io.cwd, file), standing, io }, options.yes === true)
}

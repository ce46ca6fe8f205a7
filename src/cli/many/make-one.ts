import { templateFault } from '../../render/text/template-fault.ts'
import { buildOne, type OneBuild, shownTarget } from '../build-one.ts'
import { summary } from '../build-summary.ts'
import { type ExitCode, exit, type Io } from '../io.ts'
import { problemsText } from '../problem-text.ts'
import { createProgress } from '../progress.ts'
import { userFault } from '../user-fault.ts'
import type { ListedFacility } from './facility-list.ts'
import type { Outcome } from './table.ts'

/** What all builds of one command share. */
export type ManyBuild = Omit<OneBuild, 'facility' | 'progress'>

/** What came of one facility, and what is to be said of it. */
export type Told = {
  readonly outcome: Outcome
  /** Said in one piece when it is done. */
  readonly said: readonly string[]
  /** Why something could not be printed, which may be so of all. */
  readonly unprinted: string | undefined
}

/** Why a build came to nothing that should have come to something. */
function whyNot(error: unknown): { readonly code: ExitCode; readonly text: string } {
  const outside = userFault(error)
  if (outside !== undefined) return { code: exit.unwritable, text: outside }
  const ofTemplate = templateFault(error)
  if (ofTemplate)
    return { code: exit.faults, text: problemsText([ofTemplate], (file) => file, false) }
  const text = error instanceof Error ? (error.stack ?? error.message) : String(error)
  return {
    code: exit.bug,
    text: `${text}\nThis is a fault of the program itself; please report it with the lines above.`,
  }
}

/** Makes one of a list. Whatever goes wrong with it is told, and ends nothing else. */
export async function makeOne({ folder, id }: ListedFacility, job: ManyBuild): Promise<Told> {
  const started = performance.now()
  const said: string[] = []
  const io: Io = { ...job.io, err: (text) => said.push(text), terminal: false }
  const { code, made } = await buildOne({
    ...job,
    facility: folder,
    progress: createProgress(io, true),
    io,
  }).catch((error: unknown) => {
    const { code, text } = whyNot(error)
    said.push(text)
    return { code, made: undefined }
  })
  const seconds = (performance.now() - started) / 1000
  if (made && !job.quiet)
    said.push(summary({ ...made.built, folder: shownTarget(made.target, io), seconds }))
  if (made?.unprinted) said.push(made.unprinted.stays)
  const built = made && { counts: made.built.counts, printed: made.built.printed }
  return { outcome: { id, code, built, seconds }, said, unprinted: made?.unprinted?.why }
}

import { buildOne, type OneBuild, shownTarget } from '../build-one.ts'
import { summary } from '../build-summary.ts'
import { type ExitCode, exit, type Io } from '../io.ts'
import { createProgress } from '../progress.ts'
import { userFault } from '../user-fault.ts'
import type { ListedFacility } from './facility-list.ts'
import { type Outcome, table, worst } from './table.ts'

/** What all builds of one command share. */
export type ManyBuild = Omit<OneBuild, 'facility' | 'progress'>

const secondsSince = (started: number): number => (performance.now() - started) / 1000

/** Why a build came to nothing that should have come to something. */
function told(error: unknown): { readonly code: ExitCode; readonly text: string } {
  const outside = userFault(error)
  if (outside !== undefined) return { code: exit.unwritable, text: outside }
  const text = error instanceof Error ? (error.stack ?? error.message) : String(error)
  return {
    code: exit.bug,
    text: `${text}\nThis is a fault of the program itself; please report it with the lines above.`,
  }
}

/** Says something of one facility, and why something could not be printed, which may be so of all. */
type Say = { readonly one: (text: string) => unknown; readonly unprinted: (why: string) => unknown }

/** Makes one of a list. Whatever goes wrong with it is said, and ends nothing else. */
async function oneOf(
  { folder, id }: ListedFacility,
  job: ManyBuild,
  { one: say, unprinted: sayWhy }: Say,
): Promise<Outcome> {
  const started = performance.now()
  const io: Io = { ...job.io, err: say, terminal: false }
  const made = await buildOne({
    ...job,
    facility: folder,
    progress: createProgress(io, true),
    io,
  }).catch((error: unknown) => {
    const { code, text } = told(error)
    say(text)
    return { code, made: undefined }
  })
  const seconds = secondsSince(started)
  if (made.made) {
    const { target, built, unprinted } = made.made
    if (!job.quiet) say(summary({ ...built, folder: shownTarget(target, io), seconds }))
    if (unprinted) {
      say(unprinted.stays)
      sayWhy(unprinted.why)
    }
  }
  return { id, code: made.code, built: made.made?.built, seconds }
}

/**
 * Makes the manuals of several facilities with one browser. What is said of each is said in one piece
 * when it is done, and a table at the end.
 */
export async function buildMany(
  facilities: readonly ListedFacility[],
  job: ManyBuild,
): Promise<ExitCode> {
  const started = performance.now()
  const outcomes: Outcome[] = []
  const whys = new Set<string>()
  let [taken, done] = [0, 0]
  const work = async (): Promise<void> => {
    for (let i = taken++; i < facilities.length; i = taken++) {
      const facility = facilities[i]
      if (!facility) continue
      const said: string[] = []
      const say = {
        one: (text: string) => said.push(text),
        unprinted: (why: string) => whys.add(why),
      }
      outcomes[i] = await oneOf(facility, job, say)
      done++
      if (said.length > 0)
        job.io.err(`[${done}/${facilities.length}] ${facility.shown}\n${said.join('\n')}`)
    }
  }
  // While the browser prints one, the next is worked out: that keeps both cores busy. More would only
  // wait for the browser, as two would wait for each other where there is none, and take memory meanwhile.
  const second = async (): Promise<void> => ((await job.browser.isThere()) ? work() : undefined)
  await Promise.all([work(), second()])
  if (!job.quiet) job.io.err(`\n${table(outcomes, secondsSince(started))}`)
  for (const why of whys) job.io.err(why)
  return worst(outcomes.map((o) => o.code))
}

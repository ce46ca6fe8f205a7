import { availableParallelism } from 'node:os'
import type { ExitCode } from '../io.ts'
import type { ListedFacility } from './facility-list.ts'
import { openHand } from './hands.ts'
import { type ManyBuild, makeOne, type Told } from './make-one.ts'
import { type Outcome, table, worst } from './table.ts'

/** More processes at a time would wait for the disk and take memory meanwhile. */
const mostHands = 8

/**
 * Who else makes facilities of the list. While the browser prints one, the next is worked out in the
 * same process: that keeps both cores busy, and more would only wait for the browser. Where nothing can be
 * printed, every core has a process.
 */
async function* others(job: ManyBuild, count: number) {
  const cores = Math.min(availableParallelism(), mostHands, count)
  if (cores < 2) return
  if (await job.browser.isThere()) {
    yield { make: (facility: ListedFacility) => makeOne(facility, job), end: () => undefined }
    return
  }
  const used = await job.browser.use(async () => undefined)
  const unprinted = used.kind === 'done' ? '' : used.message
  for (let n = 1; n < cores; n++) yield openHand(job, unprinted)
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
  const work = async (make: (facility: ListedFacility) => Promise<Told>): Promise<void> => {
    for (let i = taken++; i < facilities.length; i = taken++) {
      const facility = facilities[i]
      if (!facility) continue
      const { outcome, said, unprinted } = await make(facility)
      outcomes[i] = outcome
      if (unprinted !== undefined) whys.add(unprinted)
      done++
      if (said.length > 0)
        job.io.err(`[${done}/${facilities.length}] ${facility.shown}\n${said.join('\n')}`)
    }
  }
  const working = [work((facility) => makeOne(facility, job))]
  for await (const { make, end } of others(job, facilities.length))
    working.push(work(make).finally(end))
  await Promise.all(working)
  const seconds = (performance.now() - started) / 1000
  if (!job.quiet) job.io.err(`\n${table(outcomes, seconds)}`)
  for (const why of whys) job.io.err(why)
  return worst(outcomes.map((o) => o.code))
}

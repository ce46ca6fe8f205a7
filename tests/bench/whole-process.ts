import { spawnSync } from 'node:child_process'

/** Says on its last line what the process itself has used, the browser apart: CPU, ms; memory, KiB. */
const told = `data:text/javascript,process.on("exit",()=>{const u=process.resourceUsage();console.error("used "+Math.round((u.userCPUTime+u.systemCPUTime)/1000)+" "+u.maxRSS)})`

/** What a whole process took, s, and at most held, MiB. */
export type Taken = { readonly wall: number; readonly cpu: number; readonly peak: number }

/**
 * Runs a program of node as a process of its own.
 * @throws Error where it cannot be run, or ends otherwise than expected.
 */
export function runWhole(
  args: readonly string[],
  { env, fine = [0] }: { readonly env: NodeJS.ProcessEnv; readonly fine?: readonly number[] },
): Taken {
  const started = performance.now()
  const own = [...process.execArgv, '--import', told, ...args]
  const { stderr, status } = spawnSync(process.execPath, own, { env, encoding: 'utf8' })
  const wall = (performance.now() - started) / 1000
  const used = /used (\d+) (\d+)\s*$/.exec(stderr)
  if (!used || !fine.includes(status ?? -1)) throw new Error(`${args.join(' ')}: ${stderr}`)
  return { wall, cpu: Number(used[1]) / 1000, peak: Number(used[2]) / 1024 }
}

const seconds = (s: number): string => `${s.toFixed(2)} s`

/** What was measured, what it is to be at most, and what it was before work on it began. */
export type Aimed = { readonly is: number; readonly aim: number; readonly was?: number }

/** A line of the bench: what was measured in words, whether the aim is met, and what it was before. */
export const aimed = (name: string, said: string, { is, aim, was }: Aimed): string =>
  `${name.padEnd(48)} ${said} (aim ${aim}: ${is <= aim ? 'met' : 'not met'}${was === undefined ? '' : `; was ${was}`})`

const takenSaid = ({ wall, cpu, peak }: Taken): string =>
  `${seconds(wall)}, of node ${seconds(cpu)} CPU, peak ${peak.toFixed(0)} MiB`

/** What a process has taken. @param goal For how long it takes, s. */
export const takenText = (name: string, taken: Taken, goal?: Omit<Aimed, 'is'>): string =>
  goal
    ? aimed(name, takenSaid(taken), { ...goal, is: taken.wall })
    : `${name.padEnd(48)} ${takenSaid(taken)}`

export function median(values: readonly number[]): number {
  const sorted = values.toSorted((a, b) => a - b)
  return sorted[Math.floor(sorted.length / 2)] ?? Number.NaN
}

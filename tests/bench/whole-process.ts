import { spawnSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import os from 'node:os'
import path from 'node:path'
import { projectFolders } from '../../src/cli/folders.ts'

const { project } = projectFolders()

/**
 * Notes in a file, when a process of node ends, what it has used: CPU, ms; memory, KiB. What Linux counts
 * for a process includes what its parent held when it started it, so its own most is read.
 */
const atEnd = `
const { appendFileSync, readFileSync } = process.getBuiltinModule('fs')
process.on('exit', () => {
  const { userCPUTime, systemCPUTime, maxRSS } = process.resourceUsage()
  let peak = maxRSS
  try {
    peak = /VmHWM:\\s+(\\d+)/.exec(readFileSync('/proc/self/status', 'utf8'))[1]
  } catch {}
  const cpu = Math.round((userCPUTime + systemCPUTime) / 1000)
  appendFileSync(process.env.OVALKEEP_USED, cpu + ' ' + peak + '\\n')
})`
const noting = `--import=data:text/javascript,${encodeURIComponent(atEnd)}`

/** What a program and all processes of node that it starts took, and what it said. */
export type Taken = {
  /** s */
  readonly wall: number
  /** Of all of them, s. */
  readonly cpu: number
  /** What the largest of them held at most, MiB. */
  readonly peak: number
  /** What each of them held at most, added up, MiB. */
  readonly peaks: number
  readonly said: string
}

/** Surroundings of a process, and the codes with which it may end. */
type Run = { readonly env: NodeJS.ProcessEnv; readonly fine?: readonly number[] }

const script = /^node (?<flags>(?:--\S+ )*)src\/cli\/start\.mjs (?<command>\S+)$/

/** Flags of node with which `npm run` starts a command: time and memory hang on them. */
function flagsOf(command: string): readonly string[] {
  const about: unknown = JSON.parse(readFileSync(path.join(project, 'package.json'), 'utf8'))
  const { scripts } = about as { readonly scripts: Readonly<Record<string, string>> }
  for (const text of Object.values(scripts)) {
    const found = script.exec(text)?.groups
    if (found?.['command'] === command) return (found['flags'] ?? '').trim().split(' ')
  }
  throw new Error(`package.json starts no ${command}`)
}

/**
 * Runs a command of ours as a process of its own, as whoever calls `npm run` does.
 * @throws Error where it cannot be run, or ends otherwise than expected.
 */
export function runCommand([command, ...args]: readonly [string, ...string[]], run: Run): Taken {
  const start = path.join(project, 'src', 'cli', 'start.mjs')
  return runWhole([...flagsOf(command), start, command, ...args], run)
}

/**
 * Runs a program of node as a process of its own.
 * @throws Error where it cannot be run, or ends otherwise than expected.
 */
export function runWhole(args: readonly string[], { env, fine = [0] }: Run): Taken {
  const folder = mkdtempSync(path.join(os.tmpdir(), 'used-'))
  try {
    const file = path.join(folder, 'used')
    const options = `${env['NODE_OPTIONS'] ?? ''} ${noting}`.trim()
    const started = performance.now()
    const { stderr, status } = spawnSync(process.execPath, [...args], {
      env: { ...env, NODE_OPTIONS: options, OVALKEEP_USED: file },
      encoding: 'utf8',
      maxBuffer: 2 ** 26,
    })
    const wall = (performance.now() - started) / 1000
    if (!fine.includes(status ?? -1)) throw new Error(`${args.join(' ')}: ${stderr}`)
    const used = readFileSync(file, 'utf8').trim().split('\n')
    const of = (column: 0 | 1): number[] => used.map((line) => Number(line.split(' ')[column]))
    const peaks = of(1).map((kib) => kib / 1024)
    const sum = (all: readonly number[]): number => all.reduce((a, b) => a + b, 0)
    return {
      wall,
      cpu: sum(of(0)) / 1000,
      peak: Math.max(...peaks),
      peaks: sum(peaks),
      said: stderr,
    }
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
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

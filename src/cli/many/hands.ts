import { type ChildProcess, spawn } from 'node:child_process'
import path from 'node:path'
import { exit } from '../io.ts'
import type { ListedFacility } from './facility-list.ts'
import type { Task } from './hand.ts'
import type { ManyBuild, Told } from './make-one.ts'

/** Makes one facility of a list in another process. */
export type Hand = {
  readonly make: (facility: ListedFacility) => Promise<Told>
  readonly end: () => void
}

/** So much of what a process says last is repeated. */
const mostRepeated = 2000

/** What is told of a facility whose process has ended in the middle of it. */
function ended({ id }: ListedFacility, how: string, said: string, seconds: number): Told {
  const text = `The process that made it has ended (${how}).\n${said.slice(-mostRepeated)}`.trim()
  return {
    outcome: { id, code: exit.bug, built: undefined, seconds },
    said: [text],
    unprinted: undefined,
  }
}

/** A process, and what it has written of itself. */
type Started = { readonly child: ChildProcess; readonly said: () => string }

function start({ folders, io }: ManyBuild): Started {
  const child = spawn(
    process.execPath,
    ['--max-semi-space-size=16', path.join(folders.project, 'src', 'cli', 'start.mjs'), 'hand'],
    {
      env: io.env,
      cwd: io.cwd,
      stdio: ['ignore', 'ignore', 'pipe', 'ipc'],
      serialization: 'advanced',
    },
  )
  let said = ''
  child.stderr?.on('data', (data: Buffer) => {
    said = `${said}${data.toString('utf8')}`.slice(-mostRepeated)
  })
  return { child, said: () => said }
}

/** Hands a task over to a process. @returns what it tells, or how it has ended instead. */
function handOver({ child, said }: Started, task: Task): Promise<Told> {
  const started = performance.now()
  return new Promise((resolve) => {
    const finish = (told: Told): void => {
      child.off('message', finish)
      child.off('close', onClose)
      child.off('error', onError)
      resolve(told)
    }
    const fail = (how: string): void =>
      finish(ended(task.facility, how, said(), (performance.now() - started) / 1000))
    const onClose = (code: number | null, signal: string | null): void =>
      fail(signal ?? `code ${code}`)
    const onError = (error: Error): void => fail(error.message)
    child.once('message', finish)
    child.once('close', onClose)
    child.once('error', onError)
    // What is sent before it listens waits for it.
    child.send(task)
  })
}

/**
 * A process of its own that makes facilities where nothing can be printed, so that another core works too.
 * One that ends in the middle of a facility is replaced for the next.
 * @param unprinted Why nothing can be printed.
 */
export function openHand(job: ManyBuild, unprinted: string): Hand {
  const { date, quiet, needPdfs, folders, io } = job
  const { today, colors, cwd } = io
  let current: Started | undefined
  return {
    make: async (facility) => {
      if (!current?.child.connected) current = start(job)
      return handOver(current, {
        facility,
        date,
        quiet,
        needPdfs,
        folders,
        today,
        colors,
        cwd,
        unprinted,
      })
    },
    end: () => {
      if (current?.child.connected) current.child.disconnect()
    },
  }
}

import { createHash } from 'node:crypto'
import { readlinkSync } from 'node:fs'
import os from 'node:os'

/**
 * Numbers of processes mean nothing on another computer, nor in another container on the same one,
 * and a folder may be shared by all of them.
 */
function placeName(): string {
  let space = ''
  try {
    space = readlinkSync('/proc/self/ns/pid')
  } catch {
    // Not Linux: the computer's name has to do.
  }
  return createHash('sha256').update(`${os.hostname()}\0${space}`).digest('hex').slice(0, 8)
}

const place = placeName()

/** Whose something on a shared disk is: this process, `<number>.<place>`. */
export const thisOwner = `${process.pid}.${place}`

function isRunning(pid: number): boolean {
  try {
    process.kill(pid, 0)
    return true
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === 'EPERM'
  }
}

/**
 * Whether the process that calls itself so still runs; nothing where that cannot be told from here.
 * This process itself does.
 */
export function runsStill(owner: string): boolean | undefined {
  const [pid, where] = owner.split('.')
  return where === place ? isRunning(Number(pid)) : undefined
}

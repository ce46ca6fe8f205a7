import { readdir, rm } from 'node:fs/promises'
import path from 'node:path'
import { type Disk, disk } from '../../src/write/disk.ts'

/** What the n-th operation does: it fails once, or the process ends in the middle of it. */
export type Failing =
  | { readonly at: number; readonly how: 'fails'; readonly code: string }
  | { readonly at: number; readonly how: 'ends-before' | 'ends-in' | 'ends-after' }

async function removeFirst(folder: string): Promise<void> {
  const [name] = await readdir(folder)
  if (name !== undefined) await rm(path.join(folder, name), { recursive: true })
}

/** The disk of this computer with one operation that fails; `count` says how many there have been. */
export function failingDisk(failing: Failing | undefined) {
  let count = 0
  let ended = false
  const end = (): never => {
    ended = true
    throw new Error('the process has ended')
  }
  const run = (name: string, work: (half: boolean) => unknown): unknown => {
    if (ended) throw new Error('the process has ended')
    const isNow = ++count === failing?.at
    if (!isNow) return work(false)
    if (failing.how === 'fails')
      throw Object.assign(new Error(`${failing.code}: ${name}`), { code: failing.code })
    if (failing.how === 'ends-before') end()
    const done = work(failing.how === 'ends-in')
    return done instanceof Promise ? done.then(end) : end()
  }
  const wrapped = Object.fromEntries(
    Object.entries(disk).map(([name, operation]) => [
      name,
      (...args: readonly unknown[]) => {
        const [first, data] = args
        const whole = operation as (...all: readonly unknown[]) => unknown
        const work = (half: boolean): unknown => {
          if (half && name === 'writeFile') return whole(first, String(data).slice(0, 2))
          // Of a folder that goes, one part has gone.
          if (half && name === 'rm') return removeFirst(String(first))
          return whole(...args)
        }
        if (name.endsWith('Sync')) return run(name, work)
        // What throws at once would end the test, and no promise.
        return (async () => run(name, work))()
      },
    ]),
  ) as unknown as Disk
  return { disk: wrapped, count: () => count }
}

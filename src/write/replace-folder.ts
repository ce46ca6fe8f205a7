import { access, mkdir, readdir, rename, rm } from 'node:fs/promises'
import path from 'node:path'

const exists = (file: string): Promise<boolean> =>
  access(file).then(
    () => true,
    () => false,
  )

const stagedName = /^\.(new|old)-(.+)-(\d+)$/

const isRunning = (pid: number): boolean => {
  try {
    process.kill(pid, 0)
    return true
  } catch (e) {
    return (e as NodeJS.ErrnoException).code === 'EPERM'
  }
}

/**
 * Puts right what a killed build may have left: a last good folder that was moved aside and not yet
 * replaced comes back, half-written ones go. Folders of a build that still runs are left alone.
 */
export async function recoverFolder(parent: string): Promise<void> {
  const names = await readdir(parent).catch(() => [] as string[])
  for (const name of names) {
    const [, state, id = '', pid = '0'] = stagedName.exec(name) ?? []
    if (state === undefined || (Number(pid) !== process.pid && isRunning(Number(pid)))) continue
    const staged = path.join(parent, name)
    if (state === 'old' && !(await exists(path.join(parent, id))))
      await rename(staged, path.join(parent, id))
    else await rm(staged, { recursive: true, force: true })
  }
}

/**
 * Writes a whole folder in one step: `fill` works in a new folder beside the target, which takes
 * its place only when all is there. When `fill` fails or the process is killed, the target stays as
 * it was.
 */
export async function replaceFolder(
  target: string,
  fill: (staging: string) => Promise<void>,
): Promise<void> {
  const parent = path.dirname(target)
  const id = path.basename(target)
  await mkdir(parent, { recursive: true })
  await recoverFolder(parent)
  const staging = path.join(parent, `.new-${id}-${process.pid}`)
  const aside = path.join(parent, `.old-${id}-${process.pid}`)
  try {
    await mkdir(staging)
    await fill(staging)
    if (await exists(target)) await rename(target, aside)
    await rename(staging, target)
  } catch (error) {
    if (!(await exists(target)) && (await exists(aside))) await rename(aside, target)
    throw error
  } finally {
    await rm(staging, { recursive: true, force: true })
    await rm(aside, { recursive: true, force: true })
  }
}

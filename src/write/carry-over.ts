import { constants } from 'node:fs'
import path from 'node:path'
import { codeOf, type Disk, disk } from './disk.ts'

/** `binder.pdf` → `binder.kept.pdf`, or with a number where that is taken. */
function besideName(name: string, isTaken: (name: string) => boolean): string {
  const { dir, name: stem, ext } = path.posix.parse(name)
  for (let number = 1; ; number++) {
    const called = path.posix.join(dir, `${stem}.kept${number > 1 ? `-${number}` : ''}${ext}`)
    if (!isTaken(called)) return called
  }
}

/** Files and links below a folder, by their path with forward slashes; none where there is no folder. */
async function filesBelow(folder: string, on: Disk) {
  const options = { recursive: true, withFileTypes: true } as const
  const entries = await on.readdir(folder, options).catch((error) => {
    if (codeOf(error) === 'ENOENT') return []
    throw error
  })
  return entries
    .filter((entry) => !entry.isDirectory())
    .map((entry) => ({
      name: path
        .relative(folder, path.join(entry.parentPath, entry.name))
        .split(path.sep)
        .join('/'),
      isLink: entry.isSymbolicLink(),
    }))
    .sort((a, b) => (a.name < b.name ? -1 : 1))
}

/** A file or link of somebody else. */
type Theirs = { readonly file: string; readonly isLink: boolean }

/** Whether the same is there already. */
async function isSame({ file, isLink }: Theirs, other: string, on: Disk): Promise<boolean> {
  const read = (at: string): Promise<string | Buffer | undefined> =>
    (isLink ? on.readlink(at) : on.readFile(at)).catch(() => undefined)
  const [one, there] = await Promise.all([read(file), read(other)])
  return one !== undefined && there !== undefined && Buffer.from(one).equals(Buffer.from(there))
}

async function copy({ file, isLink }: Theirs, target: string, on: Disk): Promise<void> {
  await on.mkdir(path.dirname(target), { recursive: true })
  if (isLink) {
    await on.rm(target, { force: true })
    await on.symlink(await on.readlink(file), target)
  } else await on.copyFile(file, target, constants.COPYFILE_FICLONE)
}

/** What is known of two folders, the second of which takes the place of the first. */
export type Replaced = {
  /** What the last build has written, by path with forward slashes: it has done its work. */
  readonly ours: ReadonlySet<string>
  /** What the new folder was filled with. */
  readonly made: ReadonlySet<string>
  /** What was carried over, by the name that it had, with the one that it has now; added to. */
  readonly carried: Map<string, string>
}

/**
 * Copies what somebody else has put into a folder to the one that takes its place, unless that has
 * been done and it is still the same. What has the name of a new file goes beside it under another
 * one. What is taken away meanwhile is not copied.
 */
export async function carryOver(
  from: string,
  to: string,
  { ours, made, carried }: Replaced,
  on: Disk = disk,
): Promise<void> {
  const below = await filesBelow(from, on)
  const names = new Set([...below.map((f) => f.name), ...made])
  for (const { name, isLink } of below.filter((f) => !ours.has(f.name))) {
    const theirs = { file: path.join(from, name), isLink }
    if (made.has(name) && (await isSame(theirs, path.join(to, name), on))) continue
    const called =
      carried.get(name) ?? (made.has(name) ? besideName(name, (n) => names.has(n)) : name)
    if (carried.has(name) && (await isSame(theirs, path.join(to, called), on))) continue
    try {
      await copy(theirs, path.join(to, called), on)
      carried.set(name, called)
      names.add(called)
    } catch (error) {
      if (codeOf(error) !== 'ENOENT') throw error
    }
  }
}

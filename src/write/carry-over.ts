import { constants, copyFile, mkdir, readdir, readFile, readlink, symlink } from 'node:fs/promises'
import path from 'node:path'

/** `binder.pdf` → `binder.kept.pdf`. */
function besideName(name: string): string {
  const { dir, name: stem, ext } = path.posix.parse(name)
  return path.posix.join(dir, `${stem}.kept${ext}`)
}

/** Files and links below a folder, by their path with forward slashes; none where there is no folder. */
async function filesBelow(folder: string) {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true }).catch((error) => {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return []
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

const isSame = async (one: string, other: string): Promise<boolean> => {
  const [a, b] = await Promise.all([readFile(one), readFile(other)])
  return a.equals(b)
}

/**
 * Copies what somebody else has put into a folder to the one that takes its place. What has the name
 * of a new file goes beside it under another one.
 * @param ours What the last build has written, by path with forward slashes: it has done its work.
 * @param made What the new folder holds already.
 * @returns The files that were carried over, as they are called now.
 */
export async function carryOver(
  from: string,
  to: string,
  { ours, made }: { readonly ours: ReadonlySet<string>; readonly made: ReadonlySet<string> },
): Promise<readonly string[]> {
  const carried: string[] = []
  for (const { name, isLink } of await filesBelow(from)) {
    if (ours.has(name)) continue
    const old = path.join(from, name)
    if (made.has(name) && !isLink && (await isSame(old, path.join(to, name)))) continue
    const called = made.has(name) ? besideName(name) : name
    const target = path.join(to, called)
    await mkdir(path.dirname(target), { recursive: true })
    if (isLink) await symlink(await readlink(old), target)
    else await copyFile(old, target, constants.COPYFILE_FICLONE)
    carried.push(called)
  }
  return carried
}

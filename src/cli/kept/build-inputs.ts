import { createHash, type Hash } from 'node:crypto'
import { type Dirent, readdirSync, readFileSync, statSync } from 'node:fs'
import path from 'node:path'
import type { Folders } from '../load/load-manual.ts'
import { withSlashes } from '../load/shown-path.ts'
import { startedWith } from './program-id.ts'

/** A folder with more than this is no facility's own: its files are read anew by every build. */
const [mostFiles, mostBytes] = [2000, 64 * 1024 * 1024]

/** What a build is asked for. */
export type BuildAsked = {
  /** The facility's folder, and the one below which its manual is written. */
  readonly facility: string
  readonly dist: string
  /** Date of the manual, where somebody asks for one, and what the clock says, `YYYY-MM-DD`. */
  readonly date: string | undefined
  readonly today: string
  /** The browser that somebody names. */
  readonly browser: string | undefined
}

const isOwn = (entry: Dirent): boolean =>
  entry.name !== 'node_modules' && entry.name !== '.git' && entry.name !== 'dist'

/** Files below a folder, by their names; those that a link leads to as what they are. */
function filesBelow(folder: string, isWanted: (file: string) => boolean): string[] {
  const found: string[] = []
  const look = (at: string): void => {
    const entries = readdirSync(at, { withFileTypes: true }).filter(isOwn)
    for (const entry of entries.sort((a, b) => (a.name < b.name ? -1 : 1))) {
      const file = path.join(at, entry.name)
      if (!isWanted(file)) continue
      if (entry.isDirectory()) look(file)
      else if (statSync(file, { throwIfNoEntry: false })?.isFile()) found.push(file)
      if (found.length > mostFiles) throw new RangeError('too many files')
    }
  }
  look(folder)
  return found
}

function addFiles(hash: Hash, root: string, files: readonly string[]): void {
  let bytes = 0
  for (const file of files) {
    const data = readFileSync(file)
    bytes += data.length
    if (bytes > mostBytes) throw new RangeError('too many bytes')
    hash.update(`${withSlashes(path.relative(root, file))}\0${data.length}\0`).update(data)
  }
}

/**
 * One hash over all that the output of a build depends on: the program and its packages, the library,
 * the facility's folder, the day, the place and the browser that is named.
 * @returns nothing where the folder is not one that could be looked through.
 */
export function inputsOf(asked: BuildAsked, { project, content }: Folders): string | undefined {
  const { facility, dist, date, today, browser } = asked
  const hash = createHash('sha256')
  const said = [process.versions.node, process.platform, facility, dist, date, today, browser]
  hash.update(JSON.stringify(said.map((s) => s ?? null)))
  const others = path.join(content, 'facilities')
  try {
    // Whoever has started the program has looked at its sources and at what is shared.
    const sources = startedWith()
    hash.update(sources ?? '')
    const parts = sources === undefined ? ['src', 'shared'] : []
    for (const part of [...parts, 'templates', 'content'])
      addFiles(
        hash,
        project,
        filesBelow(path.join(project, part), (file) => file !== others),
      )
    addFiles(hash, project, [path.join(project, 'package-lock.json')])
    addFiles(
      hash,
      facility,
      filesBelow(facility, () => true),
    )
    return hash.digest('hex')
  } catch {
    // Whatever cannot be read is told by the build itself, with its place.
    return undefined
  }
}

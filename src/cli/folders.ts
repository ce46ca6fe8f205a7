import { existsSync, statSync } from 'node:fs'
import path from 'node:path'
import { fileURLToPath } from 'node:url'
import type { Folders } from './load/load-manual.ts'
import { pathBelow, withSlashes } from './load/shown-path.ts'

/**
 * The project is the nearest folder upward that holds the library, whether this runs from its
 * source or bundled.
 */
function projectRoot(from: string): string {
  if (existsSync(path.join(from, 'content', 'words.yaml'))) return from
  const up = path.dirname(from)
  if (up === from)
    throw new Error('the library of procedures (content/) is not where the program is')
  return projectRoot(up)
}

/** The project's own folders, wherever the command is started. */
export function projectFolders(dist?: string): Folders {
  const project = projectRoot(path.dirname(fileURLToPath(import.meta.url)))
  const at = (name: string): string => path.join(project, name)
  return {
    project,
    content: at('content'),
    shared: at('shared'),
    templates: at('templates'),
    dist: dist ?? at('dist'),
  }
}

/** Folders of the project whose files problems name by their path in it. */
const named = ['content', 'templates', 'shared'] as const

/**
 * How a terminal calls the files that problems name: by their path from the working directory, so
 * that editors and terminals find them. What is written names them without where they lie.
 */
export function terminalNames(
  facility: string,
  folders: Folders,
  cwd: string,
): (file: string) => string {
  const ofFacility = pathBelow(folders.project, facility) !== undefined ? folders.project : facility
  return (file) => {
    const isOfProject = named.some((folder) => file.startsWith(`${folder}/`))
    const absolute = path.join(isOfProject ? folders.project : ofFacility, file)
    return pathBelow(cwd, absolute) ?? withSlashes(absolute)
  }
}

/** The demo facility, which stands in where no folder is named. */
const demoFacility = 'content/facilities/larkmoor'

/**
 * The facility folder meant by an argument: a path of a folder, or of the file in it; the demo's
 * where none is named.
 */
export function facilityFolder(
  argument: string | undefined,
  cwd: string,
  folders: Folders,
): string {
  if (argument === undefined) return path.join(folders.project, demoFacility)
  const named = path.resolve(cwd, argument)
  const isItsFile =
    path.basename(named) === 'facility.yaml' && statSync(named, { throwIfNoEntry: false })?.isFile()
  return isItsFile ? path.dirname(named) : named
}

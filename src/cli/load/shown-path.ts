import path from 'node:path'

/** How paths are written on a kind of computer; that of this one where none is passed. */
type Paths = Pick<path.PlatformPath, 'sep' | 'relative' | 'isAbsolute'>

/** A path as readers see it: with `/` on every kind of computer. */
export const withSlashes = (file: string, paths: Pick<Paths, 'sep'> = path): string =>
  file.split(paths.sep).join('/')

/** The path of a file below a folder, as readers see it; nothing for a file that lies elsewhere. */
export function pathBelow(folder: string, file: string, paths: Paths = path): string | undefined {
  const way = paths.relative(folder, file)
  const leaves = way === '..' || way.startsWith(`..${paths.sep}`) || paths.isAbsolute(way)
  return leaves ? undefined : withSlashes(way, paths)
}

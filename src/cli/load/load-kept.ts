import { cacheFolder } from '../../print/browser/cache-folder.ts'
import { thisMachine } from '../../print/browser/machine.ts'
import type { Io } from '../io.ts'
import { knownTrees, useKnownTrees } from './known-trees.ts'
import { type Folders, type LoadedManual, loadManual } from './load-manual.ts'

/** Loads a manual for a command, which does not parse files anew that it has parsed before. */
export async function loadKept(
  facility: string,
  folders: Folders,
  { env, today }: Pick<Io, 'env' | 'today'>,
  wanted?: string,
): Promise<LoadedManual> {
  const cache = await cacheFolder(thisMachine(env)).catch(() => undefined)
  useKnownTrees(cache, folders)
  const loaded = await loadManual(facility, folders, today, wanted)
  knownTrees()?.save()
  return loaded
}

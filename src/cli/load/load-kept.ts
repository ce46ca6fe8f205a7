import path from 'node:path'
import { cacheFolder } from '../../print/browser/cache-folder.ts'
import { thisMachine } from '../../print/browser/machine.ts'
import { printCache } from '../../print/press/print-cache.ts'
import { keepDrawingsIn } from '../../render/drawings/kept-drawings.ts'
import type { Io } from '../io.ts'
import { type KeptResults, openResults, useResults } from '../kept/kept-results.ts'
import { recallTexts } from '../kept/kept-texts.ts'
import { programHash, programId } from '../kept/program-id.ts'
import { knownTrees, useKnownTrees } from './known-trees.ts'
import { type Folders, type LoadedManual, loadManual } from './load-manual.ts'
import { useCutFonts } from './site-fonts.ts'

/** What this process has open, so that a command that runs on remembers what it has worked out. */
let opened: { readonly folder: string; readonly results: KeptResults } | undefined

function resultsIn(cache: string, folders: Folders): KeptResults {
  const folder = path.join(cache, 'kept')
  if (opened?.folder !== folder)
    opened = { folder, results: openResults(folder, programId(folders)) }
  return opened.results
}

/**
 * Loads a manual for a command, which does not parse files anew that it has parsed before, nor cuts
 * fonts that it has cut.
 */
export async function loadKept(
  facility: string,
  folders: Folders,
  { env, today }: Pick<Io, 'env' | 'today'>,
  wanted?: string,
): Promise<LoadedManual> {
  const cache = await cacheFolder(thisMachine(env)).catch(() => undefined)
  useKnownTrees(cache, folders)
  const results = cache === undefined ? undefined : resultsIn(cache, folders)
  useResults(results)
  if (results) recallTexts(results)
  keepDrawingsIn(results)
  useCutFonts(
    cache === undefined
      ? undefined
      : { cache: printCache(path.join(cache, 'prints')), program: programHash(folders, 'read') },
  )
  const loaded = await loadManual(facility, folders, today, wanted)
  knownTrees()?.save()
  return loaded
}

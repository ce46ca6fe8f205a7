import path from 'node:path'
import { fileURLToPath } from 'node:url'
import { projectFolders } from '../../src/cli/folders.ts'
import { loadFonts } from '../../src/cli/load/load-fonts.ts'
import { type Folders, type LoadedManual, loadManual } from '../../src/cli/load/load-manual.ts'
import { loadScripts } from '../../src/cli/load/load-scripts.ts'
import { loadTemplates } from '../../src/cli/load/load-templates.ts'
import type { Manual } from '../../src/model/manual.ts'
import type { SiteAssets, SiteScripts } from '../../src/render/assets.ts'
import type { Words } from '../../src/validate/schemas/words.ts'

export const folders: Folders = projectFolders()

/**
 * The demo facilities: a complete US half-mile, a poor metric one, and a well-equipped clay oval of
 * another length.
 */
export const demos = ['larkmoor', 'brambleford', 'ostmere'] as const

export const demoFolder = (id: string): string => path.join(folders.content, 'facilities', id)

export const date = '2027-06-14'

const cache = new Map<string, Promise<LoadedManual>>()

export function loadDemo(id: string): Promise<LoadedManual> {
  const known = cache.get(id) ?? loadManual(demoFolder(id), folders, date)
  cache.set(id, known)
  return known
}

export async function demoManual(id: string): Promise<{ manual: Manual; words: Words }> {
  const { manual, library } = await loadDemo(id)
  if (!manual || !library) throw new Error(`${id} has faults`)
  return { manual, words: library.words }
}

let scripts: Promise<SiteScripts> | undefined

export async function assetsFor(words: Words, kind: 'linked' | 'inline'): Promise<SiteAssets> {
  scripts ??= loadScripts(folders)
  const [fonts, templates] = await Promise.all([loadFonts(), loadTemplates(folders)])
  return { ...templates, scripts: await scripts, words, fontCss: fonts[kind], keeps: true }
}

export const testsFolder = path.resolve(path.dirname(fileURLToPath(import.meta.url)), '..')

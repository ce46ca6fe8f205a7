import path from 'node:path'
import { build } from 'esbuild'
import { type SiteScripts, siteScripts } from '../../render/assets.ts'
import type { Folders } from './load-manual.ts'

/**
 * Bundles one script of the pages into a text that any phone of the last years runs. The same
 * sources give the same text.
 */
async function bundle(name: string, { project }: Folders): Promise<string> {
  const { outputFiles } = await build({
    entryPoints: [path.join(project, 'src', 'browser', `${name}.ts`)],
    absWorkingDir: project,
    bundle: true,
    minify: true,
    write: false,
    format: 'iife',
    target: ['chrome100', 'firefox100', 'safari15'],
    charset: 'utf8',
    legalComments: 'none',
    logLevel: 'error',
  })
  return outputFiles[0]?.text ?? ''
}

/** The worker that keeps the site on a phone, without the list of what it keeps. */
export const loadWorker = (folders: Folders): Promise<string> => bundle('worker', folders)

/** All scripts of the site's pages. */
export async function loadScripts(folders: Folders): Promise<SiteScripts> {
  const [oneFile, ...bundled] = await Promise.all([
    bundle('one-file', folders),
    ...siteScripts.map(async (name) => [name, await bundle(name, folders)] as const),
  ])
  const own = Object.fromEntries(bundled) as Pick<SiteScripts, (typeof siteScripts)[number]>
  return { ...own, oneFile }
}

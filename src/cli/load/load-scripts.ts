import { createHash } from 'node:crypto'
import { readFileSync, statSync } from 'node:fs'
import { readFile } from 'node:fs/promises'
import path from 'node:path'
import type { Plugin } from 'esbuild'
import type { FactSpec } from '../../model/fact-spec.ts'
import { keptNumbers } from '../../model/records.ts'
import { type SiteScripts, siteScripts } from '../../render/assets.ts'
import { keptResults } from '../kept/kept-results.ts'
import type { Folders } from './load-manual.ts'

/** A script with the files that it was made of. */
type Bundled = { readonly text: string; readonly from: readonly string[]; readonly hash: string }

const hashes = new Map<string, { readonly state: string; readonly hash: string }>()

/** Hash of a file, read once for each state of it that this process sees. */
function hashOfFile(file: string): string {
  const { mtimeMs, size, ino } = statSync(file)
  const state = `${mtimeMs} ${size} ${ino}`
  const known = hashes.get(file)
  if (known?.state === state) return known.hash
  const hash = createHash('sha256').update(readFileSync(file)).digest('hex')
  hashes.set(file, { state, hash })
  return hash
}

/** One hash over some files; empty where one of them cannot be read. */
function hashOf(files: readonly string[], project: string): string {
  const hash = createHash('sha256')
  try {
    for (const file of files) hash.update(`${file} ${hashOfFile(path.join(project, file))}\n`)
    return hash.digest('hex')
  } catch {
    return ''
  }
}

/** The script as it was bundled before, where each of its files says what it said. */
function bundledBefore(parts: readonly string[], project: string): string | undefined {
  const found = keptResults()?.find('scripts', parts)?.value as Bundled | undefined
  return found?.hash === hashOf(found?.from ?? [], project) ? found?.text : undefined
}

/**
 * Bundles one script of the pages, which stands in `src/<from>`, into a text that any phone of the last years runs. The same
 * sources give the same text.
 */
export async function bundleScript(
  name: string,
  { project }: Folders,
  plugins: Plugin[] = [],
  from = 'browser',
): Promise<string> {
  const parts = [from, name, ...plugins.map((plugin) => plugin.name)]
  const before = bundledBefore(parts, project)
  if (before !== undefined) return before
  const { build } = await import('esbuild')
  const { outputFiles, metafile } = await build({
    entryPoints: [path.join(project, 'src', from, `${name}.ts`)],
    absWorkingDir: project,
    bundle: true,
    minify: true,
    write: false,
    format: 'iife',
    target: ['chrome100', 'firefox100', 'safari15'],
    charset: 'utf8',
    legalComments: 'none',
    // Templates of pages that make pages come compiled.
    alias: { handlebars: 'handlebars/runtime.js' },
    logLevel: 'error',
    metafile: true,
    plugins,
  })
  const text = outputFiles[0]?.text ?? ''
  const files = Object.keys(metafile.inputs).sort()
  const bundled: Bundled = { text, from: files, hash: hashOf(files, project) }
  if (bundled.hash !== '') keptResults()?.keep('scripts', parts, bundled)
  return text
}

/** The script of a document that lays itself out and is printed by the reader's browser. */
export const loadLayScript = (folders: Folders): Promise<string> =>
  bundleScript('print-itself', folders, [], 'print/view')

/** The script that pages run in which the program prints. */
export const loadPressScript = (folders: Folders): Promise<string> =>
  bundleScript('in-page', folders, [], 'print/lay')

/** The worker that keeps the site on a phone, without the list of what it keeps. */
export const loadWorker = (folders: Folders): Promise<string> => bundleScript('worker', folders)

/** Of all facts a script carries those that it reads, without what is usual of them. */
const onlyFacts = (paths: readonly string[]): Plugin => ({
  name: 'only-facts',
  setup: ({ onLoad }) => {
    onLoad({ filter: /[\\/]shared[\\/]facts\.json$/ }, async ({ path: file }) => {
      const { facts } = JSON.parse(await readFile(file, 'utf8')) as {
        readonly facts: Readonly<Record<string, Pick<FactSpec, 'label' | 'kind' | 'range'>>>
      }
      const read = paths.map((fact) => {
        const { label, kind, range } = facts[fact] ?? {}
        return [fact, { label, kind, range, howTo: '' }]
      })
      const contents = JSON.stringify({
        facts: Object.fromEntries(read),
        gear: {},
        gearTypical: {},
      })
      return { contents, loader: 'json' }
    })
  },
})

/** Of the table of units a script carries the units: where they are from is said in the table. */
const onlyUnits: Plugin = {
  name: 'only-units',
  setup: ({ onLoad }) => {
    onLoad({ filter: /[\\/]shared[\\/]units\.json$/ }, async ({ path: file }) => {
      const { units } = JSON.parse(await readFile(file, 'utf8')) as { readonly units: unknown }
      return { contents: JSON.stringify({ units }), loader: 'json' }
    })
  },
}

/** All scripts of the site's pages. */
export async function loadScripts(folders: Folders): Promise<SiteScripts> {
  const [oneFile, ...bundled] = await Promise.all([
    bundleScript('one-file', folders),
    ...siteScripts.map(async (name) => {
      const plugins = [
        onlyUnits,
        ...(name === 'records' ? [onlyFacts(Object.values(keptNumbers))] : []),
      ]
      return [name, await bundleScript(name, folders, plugins)] as const
    }),
  ])
  const own = Object.fromEntries(bundled) as Pick<SiteScripts, (typeof siteScripts)[number]>
  return { ...own, oneFile }
}

// The sources as they are started: bundled once for each state of them, since starting one file is
// much faster than starting a thousand.
import { createHash } from 'node:crypto'
import {
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  utimesSync,
  writeFileSync,
} from 'node:fs'
import path from 'node:path'
import { pathToFileURL } from 'node:url'

/** What is a day old and was not started since goes; a program that still runs may be read from. */
const kept = 86_400_000

const sha256 = (...parts) => {
  const hash = createHash('sha256')
  for (const part of parts) hash.update(part).update('\n')
  return hash.digest('hex').slice(0, 16)
}

/** Every source file with its time and size: the same list means the same program. */
function stateOf(folder) {
  return readdirSync(folder, { withFileTypes: true, recursive: true })
    .filter((e) => e.isFile())
    .map((e) => `${e.parentPath ?? e.path}${path.sep}${e.name}`)
    .sort()
    .map((file) => {
      const { mtimeMs, size } = statSync(file)
      return `${file} ${mtimeMs} ${size}`
    })
}

const cacheOf = (project) => path.join(project, 'node_modules', '.cache', 'ovalkeep')

function stateOfAll(project, entry) {
  return sha256(
    entry,
    ...stateOf(path.join(project, 'src')),
    ...stateOf(path.join(project, 'shared')),
    ...stateOf(path.dirname(entry)),
    readFileSync(path.join(project, 'package-lock.json')),
  )
}

/** Deletes what is much older than what was made just now, whatever the clock says meanwhile. */
function dropOld(cache, own) {
  const { mtimeMs: now } = statSync(own)
  for (const name of readdirSync(cache)) {
    const old = path.join(cache, name)
    const { mtimeMs } = statSync(old, { throwIfNoEntry: false }) ?? {}
    if (mtimeMs !== undefined && mtimeMs < now - kept) rmSync(old, { recursive: true, force: true })
  }
}

/** Puts what was made beside a folder in its place, unless another process was first. */
function place(own, folder) {
  try {
    renameSync(own, folder)
  } catch (error) {
    rmSync(own, { recursive: true, force: true })
    if (!existsSync(folder)) throw error
  }
}

/** Notes that a file is in use still; where it belongs to another user, that one has to do so. */
function touch(file) {
  const now = new Date()
  try {
    utimesSync(file, now, now)
  } catch {
    // It may be made anew in a few days.
  }
}

const shared = { bundle: true, platform: 'node', target: 'node20', logLevel: 'error' }

/** Tools of the developers: in parts, each loaded when it is asked for. @returns its address. */
export async function bundledTool(project, entry) {
  const cache = cacheOf(project)
  const name = path.basename(entry, '.ts')
  const folder = path.join(cache, `${name}-${stateOfAll(project, entry)}`)
  if (!existsSync(folder)) {
    const { build } = await import('esbuild')
    const own = `${folder}.${process.pid}`
    await build({
      ...shared,
      entryPoints: [entry],
      outdir: own,
      splitting: true,
      format: 'esm',
      packages: 'external',
      sourcemap: 'linked',
      outExtension: { '.js': '.mjs' },
    })
    dropOld(cache, own)
    place(own, folder)
  }
  return pathToFileURL(path.join(folder, `${name}.mjs`)).href
}

/** Packages that stay outside: they are large, and seldom needed, or find their own files. */
const outside = ['esbuild', 'puppeteer', '@sparticuz/chromium', 'subset-font']

const entryOf = (project) => path.join(project, 'src', 'cli', 'main.ts')

/** Stands for all sources of the program, those of its pages' scripts too, as they lie there now. */
export const stateOfSources = (project) => stateOfAll(project, entryOf(project))

/**
 * The program with its packages as one script. It lies in a folder named after all that it is made
 * of, so that the same sources have the same name wherever they lie and whenever they were saved.
 * @returns the script's path.
 */
export async function bundledProgram(project, sources = stateOfSources(project)) {
  const cache = cacheOf(project)
  const state = path.join(cache, `state-${sources}`)
  if (existsSync(state)) {
    const folder = path.join(cache, readFileSync(state, 'utf8'))
    const file = path.join(folder, 'main.cjs')
    if (existsSync(file)) {
      for (const used of [state, folder]) touch(used)
      return file
    }
  }
  const { build } = await import('esbuild')
  const { outputFiles } = await build({
    ...shared,
    entryPoints: [entryOf(project)],
    outfile: path.join(cache, 'main.cjs'),
    absWorkingDir: project,
    write: false,
    format: 'cjs',
    external: outside,
    sourcemap: 'external',
    // Less to read at each start; names stay, and the map knows the lines.
    minifyWhitespace: true,
    // What is kept as compiled code cannot load modules by itself without a flag of node.
    supported: { 'dynamic-import': false },
    // A script has no address of its own to ask for.
    define: { 'import.meta.url': 'ownAddress' },
    banner: { js: "const ownAddress = require('node:url').pathToFileURL(__filename).href;" },
  })
  const files = new Map(outputFiles.map((f) => [path.basename(f.path), f.contents]))
  const script = files.get('main.cjs')
  const name = `program-${sha256(script, readFileSync(path.join(project, 'package-lock.json')))}`
  const own = path.join(cache, `${name}.${process.pid}`)
  mkdirSync(own, { recursive: true })
  for (const [file, contents] of files) writeFileSync(path.join(own, file), contents)
  dropOld(cache, own)
  place(own, path.join(cache, name))
  writeFileSync(`${state}.${process.pid}`, name)
  renameSync(`${state}.${process.pid}`, state)
  return path.join(cache, name, 'main.cjs')
}

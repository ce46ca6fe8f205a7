// First thing that runs after a clone: plain JavaScript, Node's own modules only. It installs what
// is missing, then starts the command line, the tests or the benchmark.
import { spawnSync } from 'node:child_process'
import { createHash } from 'node:crypto'
import {
  existsSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs'
import path from 'node:path'
import { fileURLToPath, pathToFileURL } from 'node:url'

const project = path.resolve(path.dirname(fileURLToPath(import.meta.url)), '..', '..')
const at = (...parts) => path.join(project, ...parts)
const [first, ...rest] = process.argv.slice(2)

const [major = 0, minor = 0] = process.versions.node.split('.').map(Number)
if (major < 20 || (major === 20 && minor < 19)) {
  console.error(`Ovalkeep needs Node.js 20.19 or newer; this is ${process.versions.node}.`)
  process.exit(70)
}

/** Tests and benchmarks need the tools of the developers too; a manual does not. */
function install(wanted) {
  const stamp = at('node_modules', '.ovalkeep-installed')
  const lock = createHash('sha256')
    .update(readFileSync(at('package-lock.json')))
    .digest('hex')
  const has = existsSync(stamp) ? readFileSync(stamp, 'utf8') : ''
  // Whoever had the developers' tools keeps them when the list of packages changes.
  const everything = wanted || has.endsWith(' all')
  if (has === `${lock} all` || (!everything && has === `${lock} use`)) return
  console.error('Installing what is missing (once) …')
  const npm = process.env.npm_execpath
  const args = [
    'ci',
    '--no-fund',
    '--no-audit',
    '--loglevel=error',
    ...(everything ? [] : ['--omit=dev']),
  ]
  const result = npm
    ? spawnSync(process.execPath, [npm, ...args], { cwd: project, stdio: ['ignore', 2, 2] })
    : spawnSync('npm', args, {
        cwd: project,
        stdio: ['ignore', 2, 2],
        shell: process.platform === 'win32',
      })
  if (result.status !== 0) {
    console.error('The installation failed; the lines above say why.')
    process.exit(70)
  }
  writeFileSync(stamp, `${lock} ${everything ? 'all' : 'use'}`)
}

/** Every source file with its time and size: the same list means the same program. */
function stateOf(folder) {
  return readdirSync(folder, { withFileTypes: true, recursive: true })
    .filter((e) => e.isFile())
    .map((e) => path.join(e.parentPath ?? e.path, e.name))
    .sort()
    .map((file) => `${file} ${statSync(file).mtimeMs} ${statSync(file).size}`)
}

/**
 * Bundles a TypeScript entry once for each state of the sources; starting one file is much faster
 * than starting two hundred.
 */
async function bundled(entry) {
  const state = createHash('sha256')
    .update(
      [
        entry,
        ...stateOf(at('src')),
        ...stateOf(at('shared')),
        ...stateOf(path.dirname(entry)),
        readFileSync(at('package-lock.json')),
      ].join('\n'),
    )
    .digest('hex')
    .slice(0, 16)
  const cache = at('node_modules', '.cache', 'ovalkeep')
  const folder = path.join(cache, `${path.basename(entry, '.ts')}-${state}`)
  const file = path.join(folder, `${path.basename(entry, '.ts')}.mjs`)
  if (!existsSync(file)) {
    const { build } = await import('esbuild')
    const own = `${folder}.${process.pid}`
    await build({
      entryPoints: [entry],
      outdir: own,
      bundle: true,
      splitting: true,
      format: 'esm',
      platform: 'node',
      target: 'node20',
      packages: 'external',
      sourcemap: 'linked',
      outExtension: { '.js': '.mjs' },
      logLevel: 'error',
    })
    // A program that still runs from an older bundle loads parts of it later, so only what is a day
    // old goes.
    const dayAgo = Date.now() - 86_400_000
    for (const old of readdirSync(cache))
      if (old !== path.basename(own) && statSync(path.join(cache, old)).mtimeMs < dayAgo)
        rmSync(path.join(cache, old), { recursive: true, force: true })
    if (!existsSync(folder)) renameSync(own, folder)
  }
  return pathToFileURL(file).href
}

process.setSourceMapsEnabled(true)
if (first === '--run-tests') {
  install(true)
  const { runGate } = await import(await bundled(at('tests', 'gate', 'gate.ts')))
  process.exitCode = runGate(project, rest)
} else if (first === '--run-sizes') {
  install(true)
  await import(await bundled(at('tests', 'sizes', 'sizes.ts')))
} else if (first === '--run-pages') {
  install(true)
  await import(await bundled(at('tests', 'sizes', 'pages.ts')))
} else if (first === '--run-guide') {
  install(true)
  await import(await bundled(at('tests', 'guide', 'guide.ts')))
} else if (first === '--run-bench') {
  install(true)
  await import(await bundled(at('tests', 'bench', 'bench.ts')))
  await import(await bundled(at('tests', 'bench', 'bench-print.ts')))
  await import(await bundled(at('tests', 'bench', 'bench-phone.ts')))
} else {
  install(false)
  const { main } = await import(await bundled(at('src', 'cli', 'main.ts')))
  process.exitCode = await main(process.argv.slice(2))
}

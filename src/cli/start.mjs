// First thing that runs after a clone: plain JavaScript, Node's own modules only. It installs what
// is missing, then starts the command line, the tests or the benchmark.
import { createHash } from 'node:crypto'
import { existsSync, readFileSync, writeFileSync } from 'node:fs'
import path from 'node:path'
import { fileURLToPath } from 'node:url'
import { setFlagsFromString } from 'node:v8'
import { bundledProgram, bundledTool, stateOfSources } from './start/bundle.mjs'
import { runScript } from './start/run-script.mjs'
import { nameSources } from './start/source-places.mjs'

const project = path.resolve(path.dirname(fileURLToPath(import.meta.url)), '..', '..')
const at = (...parts) => path.join(project, ...parts)
const [first, ...rest] = process.argv.slice(2)

const [major = 0, minor = 0] = process.versions.node.split('.').map(Number)
if (major < 20 || (major === 20 && minor < 19)) {
  console.error(`Ovalkeep needs Node.js 20.19 or newer; this is ${process.versions.node}.`)
  process.exit(70)
}

/** Tests and benchmarks need the tools of the developers too; a manual does not. */
async function install(wanted) {
  const stamp = at('node_modules', '.ovalkeep-installed')
  const lock = createHash('sha256')
    .update(readFileSync(at('package-lock.json')))
    .digest('hex')
  const has = existsSync(stamp) ? readFileSync(stamp, 'utf8') : ''
  // Whoever had the developers' tools keeps them when the list of packages changes.
  const everything = wanted || has.endsWith(' all')
  if (has === `${lock} all` || (!everything && has === `${lock} use`)) return
  const { spawnSync } = await import('node:child_process')
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

/** What a tool of the developers exports. */
async function tool(...parts) {
  await install(true)
  process.setSourceMapsEnabled(true)
  return import(await bundledTool(project, at('tests', ...parts)))
}

if (first === '--run-tests') {
  const { runGate } = await tool('gate', 'gate.ts')
  process.exitCode = runGate(project, rest)
} else if (first === '--run-sizes') {
  await tool('sizes', 'sizes.ts')
} else if (first === '--run-pages') {
  await tool('sizes', 'pages.ts')
} else if (first === '--run-guide') {
  await tool('guide', 'guide.ts')
} else if (first === '--run-sbom') {
  const { writeBill } = await tool('supply', 'sbom.ts')
  writeBill(project)
} else if (first === '--run-shake') {
  await tool('robust', 'shake-command.ts')
} else if (first === '--run-bench') {
  await tool('bench', 'bench.ts')
  await tool('bench', 'bench-site.ts')
  await tool('bench', 'bench-form.ts')
  await tool('bench', 'bench-print.ts')
  await tool('bench', 'bench-phone.ts')
  await tool('bench', 'bench-many.ts')
} else {
  await install(false)
  // Most of a command runs only once or a few times: twenty times as long as usual is waited before
  // the engine puts work into making code faster, which is a quarter of all work otherwise.
  setFlagsFromString('--interrupt-budget=1500000')
  const sources = stateOfSources(project)
  const script = await bundledProgram(project, sources)
  nameSources(script)
  const { exports, keep } = runScript(script, /^[a-z]+$/.test(first ?? '') ? first : 'help')
  exports.startedFrom(sources)
  process.exitCode = await exports.main(process.argv.slice(2))
  keep()
}

// First thing that runs after a clone: plain JavaScript, Node's own modules only. It installs what is missing, then
// starts the command line, the tests or the benchmark.
import { spawnSync } from 'node:child_process'
import { createHash } from 'node:crypto'
import { existsSync, readFileSync, writeFileSync } from 'node:fs'
import path from 'node:path'
import { fileURLToPath } from 'node:url'

const project = path.resolve(path.dirname(fileURLToPath(import.meta.url)), '..', '..')
const at = (...parts) => path.join(project, ...parts)
const [first, ...rest] = process.argv.slice(2)

const [major = 0, minor = 0] = process.versions.node.split('.').map(Number)
if (major < 20 || (major === 20 && minor < 19)) {
  console.error(`Ovalkeep needs Node.js 20.19 or newer; this is ${process.versions.node}.`)
  process.exit(70)
}

/** Tests and benchmarks need the tools of the developers too; a manual does not. */
function install(everything) {
  const stamp = at('node_modules', '.ovalkeep-installed')
  const lock = createHash('sha256').update(readFileSync(at('package-lock.json'))).digest('hex')
  const has = existsSync(stamp) ? readFileSync(stamp, 'utf8') : ''
  if (has === `${lock} all` || (!everything && has === `${lock} use`)) return
  console.error('Installing what is missing (once) …')
  const npm = process.env.npm_execpath
  const args = ['ci', '--no-fund', '--no-audit', '--loglevel=error', ...(everything ? [] : ['--omit=dev'])]
  const result = npm ? spawnSync(process.execPath, [npm, ...args], { cwd: project, stdio: ['ignore', 2, 2] }) : spawnSync('npm', args, { cwd: project, stdio: ['ignore', 2, 2], shell: process.platform === 'win32' })
  if (result.status !== 0) {
    console.error('The installation failed; the lines above say why.')
    process.exit(70)
  }
  writeFileSync(stamp, `${lock} ${everything ? 'all' : 'use'}`)
}

const run = (args) => process.exit(spawnSync(process.execPath, args, { cwd: project, stdio: 'inherit' }).status ?? 70)

if (first === '--run-tests') {
  install(true)
  run([at('node_modules', 'vitest', 'vitest.mjs'), 'run', ...rest])
} else if (first === '--run-bench') {
  install(true)
  run(['--import', 'tsx', at('tests', 'bench', 'bench.ts'), ...rest])
} else {
  install(false)
  const { register } = await import('tsx/esm/api')
  register()
  const { main } = await import('./main.ts')
  process.exitCode = await main(process.argv.slice(2))
}

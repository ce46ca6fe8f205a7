import { spawnSync } from 'node:child_process'
import path from 'node:path'

type Stage = { readonly name: string; readonly commands: readonly (readonly string[])[] }

const biome = ['@biomejs', 'biome', 'bin', 'biome']
const tsc = ['typescript', 'bin', 'tsc']
const knip = ['knip', 'bin', 'knip.js']
const vitest = ['vitest', 'vitest.mjs']

const command = (tool: readonly string[], ...args: readonly string[]): readonly string[] => [
  path.join('node_modules', ...tool),
  ...args,
]

const format: Stage = {
  name: 'format and lint',
  commands: [command(biome, 'check', '--error-on-warnings', '.')],
}
const types: Stage = {
  name: 'types and purity of the core',
  commands: [
    command(tsc, '-p', 'tsconfig.json'),
    command(tsc, '-p', path.join('src', 'tsconfig.core.json')),
    command(tsc, '-p', path.join('src', 'browser', 'tsconfig.json')),
  ],
}
const deadCode: Stage = {
  name: 'dead code',
  commands: [
    command(knip, '--no-progress'),
    command(knip, '--no-progress', '--production', '-c', 'knip.production.jsonc'),
  ],
}
const tests = (...args: readonly string[]): Stage => ({
  name: 'tests',
  commands: [command(vitest, 'run', ...args)],
})

/** Files or options named by hand are for the test runner alone. */
function stagesFor([first, ...rest]: readonly string[]): readonly Stage[] {
  if (first === '--fast' && rest.length === 0) return [format, types, tests('--project', 'fast')]
  if (first === '--fast') return [tests('--project', 'fast', ...rest)]
  if (first !== undefined) return [tests(first, ...rest)]
  return [format, types, deadCode, tests()]
}

/**
 * Everything that must hold before a change goes in, the quickest first; stops at the first stage
 * that fails. The last lines are those of the test runner, with all tests counted together.
 * @returns the exit code.
 */
export function runGate(project: string, args: readonly string[]): number {
  for (const { name, commands } of stagesFor(args)) {
    const started = performance.now()
    const code = commands.reduce(
      (failed, command) =>
        failed === 0
          ? (spawnSync(process.execPath, command, { cwd: project, stdio: 'inherit' }).status ?? 70)
          : failed,
      0,
    )
    const took = `${((performance.now() - started) / 1000).toFixed(1)} s`
    if (name === 'tests') return code
    if (code !== 0) {
      console.error(`\n${name} failed (${took}); nothing after it was run`)
      return code
    }
    console.log(`${name}: ${took}`)
  }
  return 0
}

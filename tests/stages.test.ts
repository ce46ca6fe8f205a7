import { spawnSync } from 'node:child_process'
import { readdirSync, readFileSync } from 'node:fs'
import path from 'node:path'
import { describe, expect, it } from 'vitest'

const project = path.resolve(import.meta.dirname, '..')

import { stages } from './support/stages.ts'

const core = stages.slice(0, 8)

const sources = readdirSync(path.join(project, 'src'), { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('.ts'))
  .map((file) => ({
    path: file.split(path.sep).join('/'),
    text: readFileSync(path.join(project, 'src', file), 'utf8'),
  }))

/**
 * Imports of a source (its path below `src/`) from a later stage, or from tests. Scripts of the
 * site's pages are made of the pure stages alone, and nobody imports them.
 */
function importsAgainstOrder(source: { readonly path: string; readonly text: string }): string[] {
  const folder = source.path.split('/')[0] ?? ''
  const before =
    folder === 'browser' ? [...core, folder] : stages.slice(0, stages.indexOf(folder) + 1)
  return [...source.text.matchAll(/(?:from|import) ?\(?'(\.[^']+)'/g)]
    .map((m) => path.posix.join('src', path.posix.dirname(source.path), m[1] ?? ''))
    .filter((target) => {
      const [root = '', stage = ''] = target.split('/')
      return root === 'src' ? !before.includes(stage) : root !== 'shared'
    })
    .map((target) => `${source.path} imports ${target}`)
}

describe('stages', () => {
  it('import nothing from a stage behind them', () => {
    expect(sources.length).toBeGreaterThan(300)
    expect(sources.flatMap(importsAgainstOrder)).toEqual([])
  })

  it.each([
    ['compute/figures.ts', "import { manual } from '../compose/manual.ts'"],
    ['compute/figures.ts', "export type { Manual } from '../compose/manual.ts'"],
    ['model/day.ts', "const { readYaml } = await import('../read/read-yaml.ts')"],
    ['browser/page.ts', "import { writeFiles } from '../write/write-files.ts'"],
    ['render/site/page.ts', "import { nextDue } from '../../browser/page/next-due.ts'"],
    ['write/files.ts', "import { demo } from '../../tests/support/demo.ts'"],
  ])('are told of a planted one in %s: %s', (file, text) => {
    expect(importsAgainstOrder({ path: file, text })).toHaveLength(1)
  })

  it('declare no classes', () => {
    const declaring = sources.filter(({ text }) =>
      /^\s*(?:export )?(?:abstract )?class \w/m.test(text),
    )
    expect(declaring.map((s) => s.path)).toEqual([])
  })

  it('up to the rendering ask no clock and no chance', () => {
    const asking = sources
      .filter(({ path }) => core.includes(path.split('/')[0] ?? ''))
      .filter(({ text }) => /\bDate\.now\(|\bnew Date\(\)|\bMath\.random\b/.test(text))
    expect(asking.map((s) => s.path)).toEqual([])
  })

  it('up to the rendering do not compile with files, environment, timers, console or network', () => {
    const tsc = path.join(project, 'node_modules', 'typescript', 'bin', 'tsc')
    const planted = path.join('tests', 'fixtures', 'impure')
    const { stdout } = spawnSync(process.execPath, [tsc, '-p', planted, '--pretty', 'false'], {
      cwd: project,
      encoding: 'utf8',
    })
    const lines = [...stdout.matchAll(/impure\.ts\((\d+),/g)].map((m) => Number(m[1]))
    expect(lines).toEqual([1, 5, 6, 7, 8])
  })
})

import { readFileSync } from 'node:fs'
import path from 'node:path'
import { describe, expect, it } from 'vitest'
import { projectFolders } from '../../src/cli/folders.ts'

const { project } = projectFolders()
const read = (name: string): string => readFileSync(path.join(project, name), 'utf8')

type Named = Readonly<Record<string, string>>
type Package = {
  readonly dependencies: Named
  readonly optionalDependencies: Named
  readonly devDependencies: Named
}
type Locked = {
  readonly version: string
  readonly integrity?: string
  readonly resolved?: string
  readonly license?: string
  readonly dev?: true
  readonly hasInstallScript?: true
}

const own = JSON.parse(read('package.json')) as Package
const lock = JSON.parse(read('package-lock.json')) as {
  readonly packages: Readonly<Record<string, Locked>>
}
const purposes = JSON.parse(read('shared/packages.json')) as { program: Named; tools: Named }
const program = { ...own.dependencies, ...own.optionalDependencies }
const named = { ...program, ...own.devDependencies }
const locked = Object.entries(lock.packages).filter(([name]) => name !== '')

/** Licences that let everybody use, change and pass on, whatever it becomes part of. */
const permissive = new Set([
  '0BSD',
  'Apache-2.0',
  'BlueOak-1.0.0',
  'BSD-2-Clause',
  'BSD-3-Clause',
  'CC0-1.0',
  'ISC',
  'MIT',
  'MIT OR Apache-2.0',
  'MIT-0',
  'OFL-1.1',
  'Python-2.0',
  '(MIT AND BSD)',
  '(MIT AND Zlib)',
  '(MIT OR Apache-2.0)',
])

/** Of tools that nobody passes on, changed files alone would have to be passed on as they are. */
const ofTools = new Set(['MPL-2.0'])

/** Packages that state their licence in no field, with what the text beside them is (looked at). */
const looked: Named = { 'node_modules/suncalc': 'BSD-2-Clause' }

describe('packages of others', () => {
  it('have exact versions, and are locked at these', () => {
    for (const [name, version] of Object.entries(named)) {
      expect(version, name).toMatch(/^\d+\.\d+\.\d+$/)
      expect(lock.packages[`node_modules/${name}`]?.version, name).toBe(version)
    }
  })

  it('are held by a hash of their bytes, and name no place that they come from', () => {
    expect(locked.length).toBeGreaterThan(300)
    for (const [name, { integrity, resolved }] of locked) {
      expect(integrity, name).toMatch(/^sha512-[\w+/]{86}==$/)
      expect(resolved, name).toBeUndefined()
    }
  })

  it('run nothing while they are installed', () => {
    expect(read('.npmrc').split('\n')).toContain('ignore-scripts=true')
    const asking = locked.filter(([, { hasInstallScript }]) => hasInstallScript)
    // Both do without: the first checks that its program runs, the second would fetch a browser.
    expect(asking.map(([name]) => name)).toEqual(['node_modules/esbuild', 'node_modules/puppeteer'])
  })

  it('have licences that let their work be passed on; tools among them may keep their own files', () => {
    const odd = locked.filter(([name, { license = looked[name] ?? '', dev }]) => {
      return !permissive.has(license) && !(dev === true && ofTools.has(license))
    })
    expect(odd.map(([name, { license }]) => `${name}: ${license}`)).toEqual([])
  })

  it('each have a purpose, and every purpose its package', () => {
    expect(Object.keys(purposes.program).sort()).toEqual(Object.keys(program).sort())
    expect(Object.keys(purposes.tools).sort()).toEqual(Object.keys(own.devDependencies).sort())
  })
})

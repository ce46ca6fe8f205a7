import { readFileSync } from 'node:fs'
import path from 'node:path'
import { expect, it } from 'vitest'
import { projectFolders } from '../../src/cli/folders.ts'
import { billOfMaterials } from './sbom.ts'

const { project } = projectFolders()

it('the list of what the program is made of names every locked package, and is the same each time', () => {
  const text = billOfMaterials(project)
  const bom = JSON.parse(text) as {
    bomFormat: string
    specVersion: string
    components: { name: string; version: string; hashes?: { alg: string }[] }[]
  }
  expect(bom).toMatchObject({ bomFormat: 'CycloneDX', specVersion: '1.5' })
  const lock = JSON.parse(readFileSync(path.join(project, 'package-lock.json'), 'utf8')) as {
    packages: Record<string, { version: string }>
  }
  const listed = new Set(bom.components.map(({ name, version }) => `${name}@${version}`))
  const missing = Object.entries(lock.packages)
    .filter(([at]) => at !== '')
    .map(([at, { version }]) => `${at.split('node_modules/').at(-1)}@${version}`)
    .filter((name) => !listed.has(name))
  expect(missing).toEqual([])
  expect(bom.components.every(({ hashes }) => hashes?.some(({ alg }) => alg === 'SHA-512'))).toBe(
    true,
  )
  expect(billOfMaterials(project)).toBe(text)
})

import { cp, mkdir, mkdtemp, readdir, readFile, rm, utimes, writeFile } from 'node:fs/promises'
import os from 'node:os'
import path from 'node:path'
import { pathToFileURL } from 'node:url'
import { afterEach, beforeEach, expect, it } from 'vitest'
import { folders } from '../../support/demo.ts'

const source = pathToFileURL(path.join(folders.project, 'src', 'cli', 'start', 'bundle.mjs'))
const { bundledProgram } = (await import(source.href)) as {
  readonly bundledProgram: (project: string) => Promise<string>
}

let root: string
const at = (...parts: readonly string[]): string => path.join(root, ...parts)

beforeEach(async () => {
  root = await mkdtemp(path.join(os.tmpdir(), 'bundle-'))
  await mkdir(at('one', 'src', 'cli'), { recursive: true })
  await mkdir(at('one', 'shared'))
  await writeFile(at('one', 'package-lock.json'), '{}')
  await writeFile(at('one', 'src', 'cli', 'main.ts'), "export { said } from './said.ts'\n")
  await writeFile(at('one', 'src', 'cli', 'said.ts'), "export const said: string = 'once'\n")
})

afterEach(() => rm(root, { recursive: true, force: true }))

const nameOf = async (project: string): Promise<string> =>
  path.basename(path.dirname(await bundledProgram(at(project))))

it('a program has the same name wherever its sources lie and whenever they were saved', async () => {
  const name = await nameOf('one')
  expect(await nameOf('one')).toBe(name)
  await cp(at('one', 'src'), at('two', 'src'), { recursive: true })
  await cp(at('one', 'shared'), at('two', 'shared'), { recursive: true })
  await cp(at('one', 'package-lock.json'), at('two', 'package-lock.json'))
  expect(await nameOf('two')).toBe(name)
  const later = new Date(Date.now() + 5000)
  await utimes(at('one', 'src', 'cli', 'said.ts'), later, later)
  expect(await nameOf('one')).toBe(name)
})

it('a program has another name when a source or a package changes', async () => {
  const names = [await nameOf('one')]
  await writeFile(at('one', 'src', 'cli', 'said.ts'), "export const said: string = 'twice'\n")
  names.push(await nameOf('one'))
  await writeFile(at('one', 'package-lock.json'), '{"packages": {}}')
  names.push(await nameOf('one'))
  expect(new Set(names).size).toBe(3)
  expect(await readFile(await bundledProgram(at('one')), 'utf8')).toContain('twice')
})

it('what has not been started for a day goes', async () => {
  const first = await bundledProgram(at('one'))
  const old = new Date(Date.now() - 2 * 86_400_000)
  const cache = path.dirname(path.dirname(first))
  for (const name of await readdir(cache)) await utimes(path.join(cache, name), old, old)
  await writeFile(at('one', 'src', 'cli', 'said.ts'), "export const said: string = 'twice'\n")
  const second = await bundledProgram(at('one'))
  const left = await readdir(cache)
  expect(left).toContain(path.basename(path.dirname(second)))
  expect(left).not.toContain(path.basename(path.dirname(first)))
})

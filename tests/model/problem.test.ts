import { readdir, readFile } from 'node:fs/promises'
import path from 'node:path'
import { expect, it } from 'vitest'
import { problemCodes } from '../../src/model/problem.ts'
import { folders, testsFolder } from '../support/demo.ts'

const texts = async (root: string): Promise<string[]> => {
  const names = (await readdir(root, { recursive: true, withFileTypes: true })).filter(
    (e) => e.isFile() && /\.(ts|yaml)$/.test(e.name),
  )
  return Promise.all(names.map((e) => readFile(path.join(e.parentPath, e.name), 'utf8')))
}

it('every kind of fault is raised somewhere and met in some test', async () => {
  const source = (await texts(path.join(folders.project, 'src'))).join('\n')
  const tests = (await texts(testsFolder)).join('\n')
  for (const code of Object.keys(problemCodes)) {
    expect(source.split(`'${code}'`).length, `${code} in the source`).toBeGreaterThan(2)
    expect(
      tests.includes(code) || tests.includes(code.replace('/', '\\/')),
      `${code} in the tests`,
    ).toBe(true)
  }
})

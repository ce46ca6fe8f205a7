import { existsSync, readdirSync } from 'node:fs'
import path from 'node:path'
import { expect, it } from 'vitest'
import { stages } from './support/stages.ts'

const project = path.resolve(import.meta.dirname, '..')
const folders = [...stages, 'browser']

/** `a/b.test.ts` and `a/b.more.test.ts` test the file `a/b.ts` or the folder `a/b`. */
function isMirrored(test: string): boolean {
  const folder = path.join(project, 'src', path.dirname(test))
  const subject = path.join(folder, path.basename(test).split('.')[0] ?? '')
  return ['', '.ts', '.mjs'].some((end) => existsSync(subject + end))
}

it('every test of a stage stands where its source stands', () => {
  const tests = folders.flatMap((stage) =>
    readdirSync(path.join(project, 'tests', stage), { recursive: true, encoding: 'utf8' })
      .filter((file) => file.endsWith('.test.ts'))
      .map((file) => path.join(stage, file)),
  )
  expect(tests.length).toBeGreaterThan(100)
  expect(tests.filter((t) => !isMirrored(t))).toEqual([])
})

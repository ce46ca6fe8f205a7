import { mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises'
import os from 'node:os'
import path from 'node:path'
import { pathToFileURL } from 'node:url'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { folders } from '../../support/demo.ts'

type Run = { readonly exports: { readonly sum: () => number }; readonly keep: () => void }

const source = pathToFileURL(path.join(folders.project, 'src', 'cli', 'start', 'run-script.mjs'))
const { runScript } = (await import(source.href)) as {
  readonly runScript: (file: string, use: string) => Run
}

let root: string

const script = (): string => path.join(root, 'script.cjs')
const codeFiles = async (): Promise<string[]> =>
  (await readdir(root)).filter((name) => name !== 'script.cjs').map((name) => path.join(root, name))

beforeEach(async () => {
  root = await mkdtemp(path.join(os.tmpdir(), 'script-'))
  await writeFile(script(), "exports.sum = () => 'ü'.length + 1\n")
})

afterEach(() => rm(root, { recursive: true, force: true }))

/** The script run once for a use, its code kept. */
function run(use: string): number {
  const { exports, keep } = runScript(script(), use)
  const sum = exports.sum()
  keep()
  return sum
}

describe('a script', () => {
  it('does the same with the code that was compiled before', async () => {
    expect(run('sums')).toBe(2)
    const [file = ''] = await codeFiles()
    const before = await readFile(file)
    expect(run('sums')).toBe(2)
    expect(await readFile(file)).toEqual(before)
    expect(run('others')).toBe(2)
    expect(await codeFiles()).toHaveLength(2)
  })

  it.each<[string, (bytes: Buffer) => Buffer]>([
    ['cut off', (bytes) => bytes.subarray(0, -9)],
    ['empty', () => Buffer.alloc(0)],
    ['changed in one bit', (bytes) => bytes.with(-20, (bytes.at(-20) ?? 0) ^ 4) as Buffer],
  ])('is compiled anew where its code is %s', async (_, damage) => {
    run('sums')
    const [file = ''] = await codeFiles()
    const before = await readFile(file)
    await writeFile(file, damage(before))
    expect(run('sums')).toBe(2)
    expect((await readFile(file)).length).toBe(before.length)
    expect(await codeFiles()).toHaveLength(1)
  })
})

import { mkdtemp, rm, writeFile } from 'node:fs/promises'
import os from 'node:os'
import path from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { readText } from '../../../src/cli/load/read-text.ts'

let root: string
beforeAll(async () => {
  root = await mkdtemp(path.join(os.tmpdir(), 'read-'))
})
afterAll(() => rm(root, { recursive: true, force: true }))

async function read(name: string, bytes: readonly number[]) {
  await writeFile(path.join(root, name), Uint8Array.from(bytes))
  return (await readText(path.join(root, name), name, root)).problems[0]
}

describe('a file that is no text', () => {
  it.each([
    ['facility.yaml', [0x50, 0x4b, 3, 4, 0, 0], 'a document or workbook of an office program'],
    ['facility.yaml', [0xd0, 0xcf, 0x11, 0xe0, 0], 'an older office program'],
    ['facility.yaml', [0xff, 0xfe, 0x69, 0], 'another encoding (UTF-16)'],
    ['facility.yaml', [0x25, 0x50, 0x44, 0x46, 0], 'a PDF'],
  ])('named %s is called what it is', async (name, bytes, what) => {
    const problem = await read(name, bytes)
    expect(problem?.code).toBe('file/not-text')
    expect(problem?.message).toContain(what)
    expect(problem?.hint).toContain('save it as plain text (UTF-8)')
  })

  it('is to be saved as CSV where a table was meant', async () => {
    expect((await read('depths.csv', [0x50, 0x4b, 3, 4, 0]))?.hint).toContain('as CSV (UTF-8)')
  })
})

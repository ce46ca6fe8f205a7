import { mkdtemp, readdir, readFile, rm } from 'node:fs/promises'
import os from 'node:os'
import path from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { demoFolder } from '../support/demo.ts'
import { buildInto, type PrintedDemo, printedDemo } from '../support/printed-demos.ts'

let root: string
let first: PrintedDemo
let again: readonly string[]

beforeAll(async () => {
  root = await mkdtemp(path.join(os.tmpdir(), 'manual-'))
  first = await printedDemo('brambleford')
  // A folder of its own to keep prints in: what another build has kept would always be the same.
  again = await buildInto(root, demoFolder('brambleford'), {
    quiet: true,
    env: { ...process.env, XDG_CACHE_HOME: path.join(root, 'cache') },
  })
})

afterAll(() => rm(root, { recursive: true, force: true }))

describe('a build', () => {
  it('gives the same bytes for the same input', async () => {
    const files = (await readdir(first.folder, { recursive: true, withFileTypes: true })).filter(
      (e) => e.isFile(),
    )
    expect(files.length).toBeGreaterThan(50)
    const differing: string[] = []
    for (const { parentPath, name } of files) {
      const file = path.relative(first.folder, path.join(parentPath, name))
      const [one, other] = await Promise.all([
        readFile(path.join(first.folder, file)),
        readFile(path.join(root, 'brambleford', file)),
      ])
      if (!one.equals(other)) differing.push(file)
    }
    expect(differing).toEqual([])
  })

  it('records what went in and what came out', async () => {
    const record = JSON.parse(await readFile(path.join(first.folder, 'build.json'), 'utf8')) as {
      readonly contentHash: string
      readonly facilityHash: string
      readonly fieldBook: { readonly pages: number }
      readonly files: readonly { readonly path: string; readonly bytes: number }[]
    }
    expect(record.contentHash).toMatch(/^[0-9a-f]{64}$/)
    const paths = record.files.map((f) => f.path)
    for (const file of ['binder.pdf', 'field-book.pdf', 'field-book-booklet.pdf', 'handout.pdf'])
      expect(paths).toContain(file)
    // The site leads to the book, wherever it is put.
    expect(paths).toContain('site/field-book.pdf')
    expect(record.fieldBook.pages).toBeLessThanOrEqual(24)
    for (const f of record.files)
      expect((await readFile(path.join(first.folder, f.path))).length).toBe(f.bytes)
  })

  it('says how it went on plain lines when nobody watches, and nothing when asked to be quiet', () => {
    const said = first.said.join('\n')
    expect(said).toMatch(
      /^Brambleford.*: \d+ site pages, binder of \d+ pages, field book of \d+, \d+ sheets; \d+ figures/m,
    )
    expect(said).not.toContain('\u001b')
    expect(again.filter((line) => line.startsWith('Brambleford'))).toEqual([])
  })
})

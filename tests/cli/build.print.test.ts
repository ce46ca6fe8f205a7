import { appendFile, cp, mkdtemp, readdir, readFile, rm } from 'node:fs/promises'
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

/** Files of a folder that another has not, or has with other bytes. */
async function differingFiles(one: string, other: string): Promise<readonly string[]> {
  const entries = await readdir(one, { recursive: true, withFileTypes: true })
  const files = entries.filter((e) => e.isFile())
  expect(files.length).toBeGreaterThan(50)
  const differing: string[] = []
  for (const { parentPath, name } of files) {
    const file = path.relative(one, path.join(parentPath, name))
    const [a, b] = await Promise.all([
      readFile(path.join(one, file)),
      readFile(path.join(other, file)).catch(() => undefined),
    ])
    if (!b || !a.equals(b)) differing.push(file)
  }
  return differing
}

describe('a build', () => {
  it('gives the same bytes for the same input', async () => {
    expect(await differingFiles(first.folder, path.join(root, 'brambleford'))).toEqual([])
  })

  it('gives, after an edit, the bytes of one that knows nothing of an earlier build', async () => {
    const fair = path.join(root, 'fair')
    await cp(demoFolder('brambleford'), fair, { recursive: true })
    await appendFile(
      path.join(fair, 'facility.yaml'),
      '\nnotes:\n  - procedure: harrow\n    text: Ask whoever holds the key first.\n',
    )
    const before = await readFile(path.join(root, 'brambleford', 'binder.pdf'))
    for (const [into, cache] of [
      [root, 'cache'],
      [path.join(root, 'cold'), 'cold-cache'],
    ] as const)
      await buildInto(into, fair, {
        quiet: true,
        env: { ...process.env, XDG_CACHE_HOME: path.join(root, cache) },
      })
    const after = path.join(root, 'brambleford')
    expect(before.equals(await readFile(path.join(after, 'binder.pdf')))).toBe(false)
    expect(await differingFiles(path.join(root, 'cold', 'brambleford'), after)).toEqual([])
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

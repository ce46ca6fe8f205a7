import { mkdir, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises'
import os from 'node:os'
import path from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { ownCache } from '../support/own-cache.ts'
import { buildInto, type PrintedDemo, printedDemo } from '../support/printed-demos.ts'
import { strangersFile, strangersId, strangersManual } from '../support/strangers-manual.ts'

let root: string
let first: PrintedDemo
let again: readonly string[]
/** The binder before the edit. */
let noted: Buffer

const note = '  - procedure: opening\n    text: Ask whoever holds the key first.\n'
const made = (): string => path.join(root, 'out', strangersId)

/** A fair with a note more, made, and then without it, by a program that keeps what it has printed. */
beforeAll(async () => {
  root = await mkdtemp(path.join(os.tmpdir(), 'manual-'))
  first = await printedDemo('brambleford')
  const env = await ownCache(path.join(root, 'cache'))
  const [fair, file] = [path.join(root, 'fair'), path.join(root, 'fair', 'facility.yaml')]
  await mkdir(fair)
  await writeFile(file, strangersFile.replace('\nnotes:\n', `\nnotes:\n${note}`))
  await buildInto(path.join(root, 'out'), fair, { quiet: true, env })
  noted = await readFile(path.join(made(), 'binder.pdf'))
  await writeFile(file, strangersFile)
  again = await buildInto(path.join(root, 'out'), fair, { quiet: true, env })
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
  // The other one was made by the bundled program, in a process of its own, with nothing kept.
  it('gives, after an edit, the bytes of one that knows nothing of an earlier build', async () => {
    expect(noted.equals(await readFile(path.join(made(), 'binder.pdf')))).toBe(false)
    expect(await differingFiles(await strangersManual(), made())).toEqual([])
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
    expect(again).toEqual([])
  })
})

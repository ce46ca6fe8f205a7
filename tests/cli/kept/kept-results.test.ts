import { mkdtemp, readdir, readFile, rm, utimes, writeFile } from 'node:fs/promises'
import os from 'node:os'
import path from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { keptOr, openResults, useResults } from '../../../src/cli/kept/kept-results.ts'

let root: string

const open = (program = 'program') => openResults(root, program)

/** The files of results, and nothing else that was left behind. */
const files = async (kind = 'sum'): Promise<string[]> =>
  (await readdir(path.join(root, kind))).sort().map((name) => path.join(root, kind, name))

beforeEach(async () => {
  root = await mkdtemp(path.join(os.tmpdir(), 'results-'))
})

afterEach(async () => {
  useResults(undefined)
  await rm(root, { recursive: true, force: true })
})

describe('a result that is kept', () => {
  const value = { list: [1, undefined, { a: Number.NaN }], map: new Map([['a', 'ü']]) }

  it('is found again by another process, as it was', () => {
    open().keep('sum', ['a', 'b'], value)
    expect(open().find('sum', ['a', 'b'])).toStrictEqual({ value })
  })

  it.each([
    ['other parts', 'sum', ['a', 'c'], 'program'],
    ['the same letters parted otherwise', 'sum', ['ab', ''], 'program'],
    ['another kind', 'product', ['a', 'b'], 'program'],
    ['another program', 'sum', ['a', 'b'], 'changed'],
  ])('is not taken for %s', (_, kind, parts, program) => {
    open().keep('sum', ['a', 'b'], value)
    expect(open(program).find(kind, parts)).toBeUndefined()
  })

  it.each<[string, (bytes: Buffer) => Buffer]>([
    ['cut off', (bytes) => bytes.subarray(0, -3)],
    ['empty', () => Buffer.alloc(0)],
    ['changed in one bit', (bytes) => bytes.with(40, (bytes[40] ?? 0) ^ 1) as Buffer],
    ['of something else', () => Buffer.from('{"list": [1, 2, 3], "and": "no result at all"}')],
  ])('is made anew where its file is %s', async (_, damage) => {
    open().keep('sum', ['a'], value)
    const [file = ''] = await files()
    await writeFile(file, damage(await readFile(file)))
    expect(open().find('sum', ['a'])).toBeUndefined()
    useResults(open())
    expect(await keptOr('sum', ['a'], () => value)).toBe(value)
    expect(open().find('sum', ['a'])).toStrictEqual({ value })
  })

  it('goes when many others were asked for since', async () => {
    open().keep('sum', ['first'], 1)
    const old = new Date(Date.UTC(2020, 0, 1))
    for (const file of await files()) await utimes(file, old, old)
    for (let i = 0; i < 40; i++) open().keep('sum', [String(i)], i)
    expect((await files()).length).toBe(24)
    expect(open().find('sum', ['first'])).toBeUndefined()
  })

  it('leaves nothing half written behind, whoever else writes it', async () => {
    const [one, other] = [open(), open()]
    one.keep('sum', ['a'], 1)
    other.keep('sum', ['a'], 1)
    expect(await files()).toHaveLength(1)
    expect(open().find('sum', ['a'])).toEqual({ value: 1 })
  })
})

describe('what is worked out', () => {
  it('is worked out once where it may be kept, and each time where it may not', async () => {
    useResults(open())
    const made: string[] = []
    const ask = (part: string) =>
      keptOr(
        'sum',
        [part],
        () => {
          made.push(part)
          return part
        },
        (sum) => sum !== 'faulty',
      )
    for (const part of ['sound', 'faulty', 'sound', 'faulty']) expect(await ask(part)).toBe(part)
    expect(made).toEqual(['sound', 'faulty', 'faulty'])
  })

  it('is worked out where nothing can be kept', async () => {
    useResults(openResults(path.join(root, 'a file'), 'program'))
    await writeFile(path.join(root, 'a file'), '')
    expect(await keptOr('sum', ['a'], () => 1)).toBe(1)
    useResults(undefined)
    expect(await keptOr('sum', ['a'], () => 2)).toBe(2)
  })
})

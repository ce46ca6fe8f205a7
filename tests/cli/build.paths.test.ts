import { cp, mkdtemp, readdir, readFile, realpath, rm } from 'node:fs/promises'
import os from 'node:os'
import path from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { build } from '../../src/cli/build.ts'
import { explain } from '../../src/cli/explain/explain.ts'
import type { Io } from '../../src/cli/io.ts'
import { figuresFile } from '../../src/compose/figures-file.ts'
import { date, demoFolder } from '../support/demo.ts'

let root: string
let said: string

const io = (): Io => ({
  out: (t) => (said += `${t}\n`),
  err: (t) => (said += `${t}\n`),
  colors: false,
  terminal: false,
  env: { OVALKEEP_BROWSER: path.join(root, 'no-browser') },
  cwd: root,
  today: date,
})

/** Builds a copy of a demo that lies in a folder of its own, outside the project. */
async function buildElsewhere(name: string): Promise<string> {
  const fair = path.join(root, name, 'fair')
  await cp(demoFolder('larkmoor'), fair, { recursive: true })
  const into = path.join(root, name, 'out')
  expect(await build([fair], { into, date, quiet: true }, io())).toBe(3)
  return path.join(into, 'larkmoor')
}

const filesOf = async (folder: string): Promise<readonly (readonly [string, Buffer])[]> => {
  const all = await readdir(folder, { recursive: true, withFileTypes: true })
  const names = all
    .filter((e) => e.isFile())
    .map((e) => path.relative(folder, path.join(e.parentPath, e.name)))
    .sort()
  return Promise.all(names.map(async (n) => [n, await readFile(path.join(folder, n))] as const))
}

let first: readonly (readonly [string, Buffer])[]
let second: readonly (readonly [string, Buffer])[]

beforeAll(async () => {
  said = ''
  root = await realpath(await mkdtemp(path.join(os.tmpdir(), 'elsewhere-')))
  first = await filesOf(await buildElsewhere('one'))
  second = await filesOf(await buildElsewhere('other'))
})
afterAll(() => rm(root, { recursive: true, force: true }))

describe('a facility that lies outside the project', () => {
  it('leaves no trace in what is written of where it lies', () => {
    expect(first.length).toBeGreaterThan(40)
    const home = [root, os.tmpdir(), path.resolve(import.meta.dirname, '..', '..')]
    const telling = first.filter(([, data]) => home.some((folder) => data.includes(folder)))
    expect(telling.map(([name]) => name)).toEqual([])
  })

  it('gives the same bytes from another folder', () => {
    expect(second.map(([name]) => name)).toEqual(first.map(([name]) => name))
    const differing = second.filter(([, data], i) => !first[i]?.[1].equals(data))
    expect(differing.map(([name]) => name)).toEqual([])
  })

  it('is named in figures.json by its own files', () => {
    const json = first.find(([name]) => name === 'figures.json')?.[1].toString('utf8') ?? ''
    const { figures } = figuresFile.parse(JSON.parse(json))
    const places = figures.flatMap((f) => f.inputs.flatMap((i) => i.provenance.where ?? []))
    expect(places.length).toBeGreaterThan(100)
    expect(places.filter((p) => !/^[\w.-]+:\d+$/.test(p))).toEqual([])
  })

  it('is explained without where it lies', async () => {
    said = ''
    const facility = path.join(root, 'one', 'fair')
    expect(await explain('harrow.time', [], { facility, json: true }, io())).toBe(0)
    expect(said).toContain('"where": "facility.yaml:')
    expect(said).not.toContain(root)
  })
})

import { createHash } from 'node:crypto'
import { mkdir, mkdtemp, readdir, rm, utimes, writeFile } from 'node:fs/promises'
import os from 'node:os'
import path from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { type BuildAsked, inputsOf } from '../../../src/cli/kept/build-inputs.ts'
import { keepBuild, unchangedBuild } from '../../../src/cli/kept/kept-build.ts'

const sha256 = (text: string): string => createHash('sha256').update(text).digest('hex')

let root: string
const at = (...parts: readonly string[]): string => path.join(root, ...parts)

/** A project of a few files, as far as their hash is concerned. */
const folders = () => ({
  project: at('project'),
  content: at('project', 'content'),
  shared: at('project', 'shared'),
  templates: at('project', 'templates'),
  dist: at('dist'),
})

const asked = (more: Partial<BuildAsked> = {}): BuildAsked => ({
  facility: at('fair'),
  dist: at('dist'),
  date: undefined,
  today: '2027-06-14',
  browser: undefined,
  ...more,
})

const inputs = (more?: Partial<BuildAsked>): string | undefined => inputsOf(asked(more), folders())

const put = async (file: string, text: string): Promise<void> => {
  await mkdir(path.dirname(at(file)), { recursive: true })
  await writeFile(at(file), text)
}

const built = {
  name: 'A fair',
  counts: { pages: 1, figures: 2, estimates: 0, findings: 0, worksheets: 0, procedures: 0 },
  printed: undefined,
  files: 2,
}

/** What a build would have written, noted as finished. */
async function finish(): Promise<void> {
  await put('dist/fair/site/index.html', 'page')
  const files = [{ path: 'site/index.html', sha256: sha256('page') }]
  await put('dist/fair/build.json', JSON.stringify({ files }))
  const target = at('dist', 'fair')
  const browser = at('browser')
  const went = inputs() ?? ''
  keepBuild(at('cache'), asked(), { inputs: went, target, browser, problems: [], built })
}

const found = (more?: Partial<BuildAsked>) =>
  unchangedBuild(at('cache'), asked(more), inputs(more) ?? '')

beforeEach(async () => {
  root = await mkdtemp(path.join(os.tmpdir(), 'kept-'))
  for (const part of [
    'src',
    'templates',
    'shared',
    'content/facilities/other',
    'content/procedures',
  ])
    await put(`project/${part}/a.yaml`, 'a: 1')
  await put('project/package-lock.json', '{}')
  await put('fair/facility.yaml', 'name: A fair')
  await put('browser', 'a program')
})

afterEach(() => rm(root, { recursive: true, force: true }))

describe('a build of which nothing has changed', () => {
  it('is known again, with what it said', async () => {
    expect(found()).toBeUndefined()
    await finish()
    expect(found()?.built).toEqual(built)
  })

  it.each([
    'project/src/a.yaml',
    'project/templates/a.yaml',
    'project/shared/a.yaml',
    'project/content/procedures/a.yaml',
    'project/package-lock.json',
    'fair/facility.yaml',
  ])('is another one when %s changes', async (file) => {
    await finish()
    await put(file, 'changed')
    expect(found()).toBeUndefined()
  })

  it('is another one when a file is added, goes or gets another name', async () => {
    await finish()
    await put('fair/procedures/own.yaml', 'id: own')
    expect(found()).toBeUndefined()
    await rm(at('fair', 'procedures'), { recursive: true })
    expect(found()).toBeDefined()
    await put('project/content/procedures/b.yaml', 'a: 1')
    await rm(at('project', 'content', 'procedures', 'a.yaml'))
    expect(found()).toBeUndefined()
  })

  it('is another one on another day, for another date, with another browser', async () => {
    await finish()
    expect(found({ today: '2027-06-15' })).toBeUndefined()
    expect(found({ date: '2027-06-15' })).toBeUndefined()
    expect(found({ browser: '/usr/bin/other' })).toBeUndefined()
    await utimes(at('browser'), 1, 1)
    expect(found()).toBeUndefined()
  })

  it('does not care for other facilities of the library', async () => {
    await finish()
    await put('project/content/facilities/other/a.yaml', 'changed')
    expect(found()).toBeDefined()
  })

  it.each([
    ['changed', () => put('dist/fair/site/index.html', 'Page')],
    ['taken out', () => rm(at('dist', 'fair', 'site', 'index.html'))],
    ['changed in its record', () => put('dist/fair/build.json', '{"files":[]}')],
  ])('is made again where its output was %s', async (_, change) => {
    await finish()
    await change()
    expect(found()).toBeUndefined()
  })

  it('does not care for files of others beside its output, which stay there', async () => {
    await finish()
    await put('dist/fair/notes.txt', 'mine')
    expect(found()).toBeDefined()
  })

  it('leaves nothing half-written behind', async () => {
    await finish()
    const kept = await readdir(at('cache'), { recursive: true })
    expect(kept.filter((name) => !/(prints|builds|\.json)$/.test(name))).toEqual([])
  })
})

import { cp, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises'
import os from 'node:os'
import path from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { openResults, useResults } from '../../../src/cli/kept/kept-results.ts'
import { keepTexts, recallTexts } from '../../../src/cli/kept/kept-texts.ts'
import { type Folders, loadManual } from '../../../src/cli/load/load-manual.ts'
import { oneFileFirst, siteWith } from '../../../src/cli/site-with.ts'
import { keepDrawingsIn } from '../../../src/render/drawings/kept-drawings.ts'
import { date, demoFolder, folders } from '../../support/demo.ts'

let root: string
const at = (...parts: readonly string[]): string => path.join(root, ...parts)
const own = (): Folders => ({ ...folders, content: at('content'), templates: at('templates') })

beforeAll(async () => {
  root = await mkdtemp(path.join(os.tmpdir(), 'edits-'))
  for (const name of ['content', 'templates'] as const)
    await cp(folders[name], at(name), { recursive: true })
  await cp(demoFolder('larkmoor'), at('fair'), { recursive: true })
})

afterAll(async () => {
  alone()
  await rm(root, { recursive: true, force: true })
})

/** Everything that a build without PDFs writes of the manual. */
async function made(): Promise<ReadonlyMap<string, Buffer>> {
  const { manual, library } = await loadManual(at('fair'), own(), date)
  if (!manual || !library) throw new Error('the facility has faults')
  const nothing = { files: [], older: undefined, last: undefined }
  const { words } = library
  const first = await oneFileFirst(manual, words, own())
  const { site, beside } = await siteWith([], nothing, manual, words, first)
  return new Map([...site, ...beside].map((f) => [f.path, Buffer.from(f.data)]))
}

/** Takes nothing of what is kept. */
function alone(): void {
  useResults(undefined)
  keepDrawingsIn(undefined)
}

/** As a command makes it that finds what earlier ones have kept. */
async function madeWarm(): Promise<ReadonlyMap<string, Buffer>> {
  const results = openResults(at('kept'), 'program')
  useResults(results)
  recallTexts(results)
  keepDrawingsIn(results)
  const files = await made()
  keepTexts()
  return files
}

const edit = async (file: string, from: RegExp, to: string): Promise<void> => {
  const text = await readFile(at(file), 'utf8')
  expect(text).toMatch(from)
  await writeFile(at(file), text.replace(from, to))
}

describe('what is kept', () => {
  it.each<[string, () => Promise<void>]>([
    ['nothing', async () => undefined],
    ['a value of the facility', () => edit('fair/facility.yaml', /speed: 5 mph/, 'speed: 4 mph')],
    ['a measure of the oval', () => edit('fair/facility.yaml', /turns: 70 ft/, 'turns: 72 ft')],
    [
      'a place at the oval',
      () =>
        edit(
          'fair/facility.yaml',
          /Gate B \(infield\), station: 760 ft/,
          'Gate <B>, station: 800 ft',
        ),
    ],
    [
      'what stands below a drawing',
      () => edit('content/words.yaml', /caption: The weeks before the fair/, 'caption: All weeks'),
    ],
    [
      'a text of the library',
      () => edit('content/procedures/seal.yaml', /^purpose: /m, '$&Slowly. '),
    ],
    [
      'a word',
      () => edit('content/words.yaml', /^( +menu: )What do you see\?$/m, '$1What is seen?'),
    ],
    ['a template', () => edit('templates/site/symptoms.hbs', /<h1>/, '<h1 class="other">')],
  ])('changes no byte after an edit of %s', async (_, change) => {
    await change()
    const warm = await madeWarm()
    alone()
    const cold = await made()
    expect([...warm.keys()].sort()).toEqual([...cold.keys()].sort())
    for (const [file, bytes] of cold) expect(warm.get(file)?.equals(bytes), file).toBe(true)
  })
})

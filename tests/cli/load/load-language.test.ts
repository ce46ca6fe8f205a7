import { appendFile, readFile, rm, writeFile } from 'node:fs/promises'
import path from 'node:path'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { type Folders, loadManual } from '../../../src/cli/load/load-manual.ts'
import { date, demoFolder } from '../../support/demo.ts'
import {
  inEnglish,
  nonsenseCode,
  nonsenseFacility,
  withNonsense,
} from '../../support/nonsense-language.ts'

let folders: Folders
let facility: string

beforeAll(async () => {
  folders = await withNonsense()
  facility = await nonsenseFacility('brambleford', folders)
})
afterAll(() => rm(path.dirname(folders.content), { recursive: true, force: true }))

const problemsWith = async (file: string, edit: (text: string) => string): Promise<string[]> => {
  const at = path.join(folders.content, 'languages', nonsenseCode, file)
  const text = await readFile(at, 'utf8')
  const changed = edit(text)
  expect(changed).not.toBe(text)
  await writeFile(at, changed)
  const { problems } = await loadManual(facility, folders, date)
  await writeFile(at, text)
  return problems.map((p) => `${p.place.file}:${p.place.line} ${p.code} ${inEnglish(p.message)}`)
}

it('a facility that speaks another language gets the manual in that language, with the same figures', async () => {
  const [there, here] = await Promise.all([
    loadManual(facility, folders, date),
    loadManual(demoFolder('brambleford'), folders, date),
  ])
  expect(there.problems).toEqual([])
  expect(there.manual?.facility.lang).toBe(nonsenseCode)
  expect(there.manual?.procedures[0]?.title).not.toBe(here.manual?.procedures[0]?.title)
  const figures = (m: typeof here.manual) => m?.figures.map((f) => f.value.ok && f.value.si)
  expect(figures(there.manual)).toEqual(figures(here.manual))
  expect(there.manual?.procedures.map((p) => inEnglish(p.purpose))).toEqual(
    here.manual?.procedures.map((p) => p.purpose),
  )
})

it('a fault in a translated text is shown in the file of the language', async () => {
  expect(await problemsWith('chapters/duties.yaml', (t) => t.replace('**', '<b>'))).toEqual([
    expect.stringMatching(/^content\/languages\/qaa\/chapters\/duties\.yaml:\d+ text\/html/),
  ])
})

it('a file of the language that cannot be read is said once, not as missing too', async () => {
  expect(await problemsWith('sections.yaml', (t) => `"${t}`)).toEqual([
    expect.stringMatching(/^content\/languages\/qaa\/sections\.yaml:\d+ yaml\/syntax/),
  ])
})

it('files are the same as those of the library', async () => {
  const folder = path.join(folders.content, 'languages', nonsenseCode)
  const text = await readFile(path.join(folder, 'sections.yaml'), 'utf8')
  await rm(path.join(folder, 'sections.yaml'))
  await appendFile(path.join(folder, 'shelves.yaml'), text)
  const { problems } = await loadManual(facility, folders, date)
  await rm(path.join(folder, 'shelves.yaml'))
  await writeFile(path.join(folder, 'sections.yaml'), text)
  expect(problems.map((p) => p.message)).toEqual([
    'there is no file content/languages/qaa/sections.yaml',
    'the library has no file of this name',
  ])
})

it('a language without a folder is refused at its line of the facility file', async () => {
  const file = path.join(facility, 'facility.yaml')
  const text = await readFile(file, 'utf8')
  await writeFile(file, text.replace(`language: ${nonsenseCode}`, 'language: qab'))
  const { problems } = await loadManual(facility, folders, date)
  await writeFile(file, text)
  expect(problems.map((p) => `${p.message}; ${p.hint}`)).toEqual([
    'there is no folder content/languages/qab; known: en, qaa',
  ])
  expect(problems[0]?.place.line).toBe(text.trimEnd().split('\n').length)
})

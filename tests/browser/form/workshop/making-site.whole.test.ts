import { readdir, readFile } from 'node:fs/promises'
import path from 'node:path'
import { unzipSync } from 'fflate'
import { beforeAll, describe, expect, it } from 'vitest'
import { libraryOf } from '../../../../src/browser/form/workshop/library.ts'
import { makeSite, workshopOf, zipped } from '../../../../src/browser/form/workshop/making-site.ts'
import { workFor } from '../../../../src/browser/form/workshop/work.ts'
import { loadMakings } from '../../../../src/cli/site-files.ts'
import { composeFiguresFile } from '../../../../src/compose/figures-file.ts'
import type { OutputFile } from '../../../../src/model/output-file.ts'
import { oneFileOf, siteOf } from '../../../../src/render/site/site-files.ts'
import { date, demoFolder, demoManual, demos, folders } from '../../../support/demo.ts'
import { makerPage } from '../../../support/maker-page.ts'

let page: Awaited<ReturnType<typeof makerPage>>
beforeAll(async () => {
  page = await makerPage()
})

/** The files of a demo, as somebody picks them. */
async function picked(id: string): Promise<ReadonlyMap<string, string>> {
  const names = await readdir(demoFolder(id))
  const texts = names.map((name) => readFile(path.join(demoFolder(id), name), 'utf8'))
  return new Map((await Promise.all(texts)).map((text, i) => [names[i] ?? '', text]))
}

const textsOf = (files: readonly OutputFile[]): ReadonlyMap<string, string> =>
  new Map(
    files
      .filter(({ path: name }) => !/\.(?:woff2|png|xlsx)$/.test(name))
      .map(({ path: name, data }) => [
        name,
        typeof data === 'string' ? data : new TextDecoder().decode(data),
      ]),
  )

/** Where a name or place is said: places in the folder are called by the project's path there. */
const asPicked = (text: string, id: string): string =>
  text.replaceAll(`content/facilities/${id}/`, '')

/** What depends on the fonts, which the page carries cut once for all manuals. */
const ofFonts = ['assets/site.css', 'worker.js', 'manual.html']

describe.each(demos)('the page alone, with the files of %s', (id) => {
  it('finds what the program finds, and works out the same numbers', async () => {
    const { manual, problems, leftOut, standIns } = workFor(
      page.data,
      date,
      () => new Map(),
    )(await picked(id))
    const program = (await demoManual(id)).manual
    expect({ problems, leftOut, standIns }).toEqual({ problems: [], leftOut: [], standIns: [] })
    if (!manual) throw new Error('no manual')
    const numbers = JSON.stringify(composeFiguresFile(manual))
    expect(numbers).toBe(asPicked(JSON.stringify(composeFiguresFile(program)), id))
    expect(numbers.length).toBeGreaterThan(100_000)
  })

  it('makes the same pages, byte for byte', async () => {
    const files = await picked(id)
    const { manual } = workFor(page.data, date, () => new Map())(files)
    const workshop = workshopOf(page.data, page.templates)
    if (!manual || !workshop) throw new Error('no manual')
    const { words } = libraryOf(page.data, files)
    const made = await makeSite(manual, words, workshop)

    const program = await demoManual(id)
    const makings = await loadMakings(folders)
    const { insides, ...oneFile } = await oneFileOf(program.manual, program.words, makings)
    // The pages say how large that file is, and its fonts are cut otherwise.
    const bytes = new TextEncoder().encode(made.oneFile).length
    const printed = new Map([[oneFile.path, { bytes }]])
    const site = await siteOf(program.manual, program.words, makings, printed, insides)

    const [here, there] = [textsOf(made.files), textsOf(site)]
    expect([...here.keys()].filter((name) => !ofFonts.includes(name)).sort()).toEqual(
      [...there.keys()].filter((name) => !ofFonts.includes(name)).sort(),
    )
    const others = [...there].filter(
      ([name, text]) => !ofFonts.includes(name) && here.get(name) !== asPicked(text, id),
    )
    expect(others.map(([name]) => name)).toEqual([])
    const isPage = (name: string): boolean => name.endsWith('.html')
    expect([...there.keys()].filter(isPage).length).toBeGreaterThan(100)
    // The same again where fonts stand: all but their rules.
    const withoutFonts = (text = ''): string => text.replace(/@font-face\{[^}]*\}\n*/g, '')
    const ofPolicy = (text: string): string => text.replace(/'sha256-[^']*'/g, '')
    expect(withoutFonts(here.get('assets/site.css'))).toBe(
      withoutFonts(there.get('assets/site.css')),
    )
    expect(ofPolicy(withoutFonts(made.oneFile))).toBe(
      asPicked(ofPolicy(withoutFonts(String(oneFile.data))), id),
    )

    const zip = unzipSync(zipped(made.files, id, manual.date))
    expect(Object.keys(zip).sort()).toEqual(
      made.files.map(({ path: name }) => `${id}/${name}`).sort(),
    )
    expect(zipped(made.files, id, manual.date)).toEqual(zipped(made.files, id, manual.date))
  })
})

it('carries no script that is made of text, and asks nobody anything', () => {
  expect(page.policy).not.toMatch(/unsafe-eval|connect-src|https?:/)
  expect(page.policy).toMatch(/default-src 'none'; script-src 'sha256-/)
  expect(page.html.length).toBeLessThan(3_850_000)
})

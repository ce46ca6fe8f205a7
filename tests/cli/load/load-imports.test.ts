import { cp, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises'
import os from 'node:os'
import path from 'node:path'
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest'
import { openResults, useResults } from '../../../src/cli/kept/kept-results.ts'
import { loadFacility } from '../../../src/cli/load/load-facility.ts'
import { date, demoFolder } from '../../support/demo.ts'
import { rawWorkbook, textSheet } from '../../support/workbooks.ts'

let folder = ''
beforeAll(async () => {
  folder = await mkdtemp(path.join(os.tmpdir(), 'facility-'))
  await cp(demoFolder('larkmoor'), folder, { recursive: true })
})
afterAll(() => rm(folder, { recursive: true, force: true }))

const load = () => loadFacility({ root: folder, shown: '' }, { today: date, wanted: date })
const inFile = async (change: (text: string) => string): Promise<void> => {
  const text = await readFile(path.join(demoFolder('larkmoor'), 'facility.yaml'), 'utf8')
  await writeFile(path.join(folder, 'facility.yaml'), change(text))
}

describe('a workbook that a facility file names', () => {
  const asSheet = async (): Promise<Uint8Array> => {
    const csv = await readFile(path.join(demoFolder('larkmoor'), 'depths.csv'), 'utf8')
    const rows = csv.split('\n').map((line) => line.split(','))
    return rawWorkbook([textSheet('Read me', [['about']]), textSheet('June', rows)])
  }

  it('is read as a table is, from the sheet that is named', async () => {
    const before = (await load()).facility?.imported.surveys[0]?.days
    await writeFile(path.join(folder, 'depths.xlsx'), await asSheet())
    await inFile((text) => text.replace('depths.csv', 'depths.xlsx, sheet: June'))
    const { facility, problems, files } = await load()
    expect(problems.filter((p) => p.severity === 'error')).toEqual([])
    expect(facility?.imported.surveys[0]?.days).toEqual(before)
    expect(before?.length).toBeGreaterThan(0)
    expect(files.map((f) => f.path)).toContain('depths.xlsx')
  })

  it('is told of in the line that names it where it cannot be opened', async () => {
    await writeFile(path.join(folder, 'depths.xlsx'), 'station,depth\n1,2\n')
    const { problems } = await load()
    expect(problems).toMatchObject([
      {
        code: 'file/format',
        message: expect.stringContaining('damaged'),
        place: { file: 'facility.yaml' },
      },
    ])
    expect(problems[0]?.source).toContain('depths.xlsx')
  })

  it('is told of as such under the name of a text', async () => {
    await writeFile(path.join(folder, 'depths.csv'), await asSheet())
    await inFile((text) => text)
    const { problems } = await load()
    expect(problems[0]?.message).toBe(
      'the file is a document or workbook of an office program, not plain text',
    )
    expect(problems[0]?.hint).toContain('a workbook is named .xlsx')
  })
})

describe('tables that were read before', () => {
  afterEach(() => useResults(undefined))

  /** A facility as another process has it that finds what earlier ones have kept. */
  const again = () => {
    useResults(openResults(path.join(folder, 'kept'), 'program'))
    return load()
  }

  const depths = () => path.join(folder, 'depths.csv')

  it('say the same, with the same problems', async () => {
    await cp(demoFolder('larkmoor'), folder, { recursive: true })
    const { facility, problems } = await load()
    await again()
    const kept = await again()
    expect(kept.facility?.imported).toEqual(facility?.imported)
    expect(kept.problems).toEqual(problems)
  })

  it('are read again where one of them, or where it is named, has changed', async () => {
    await again()
    const text = await readFile(depths(), 'utf8')
    const lines = text.trimEnd().split('\n')
    await writeFile(depths(), `${lines.slice(0, -1).join('\n')}\n`)
    expect((await again()).facility?.imported).toEqual((await fresh()).facility?.imported)
    await inFile((yaml) => `# A line more\n${yaml}`)
    expect((await again()).facility?.imported).toEqual((await fresh()).facility?.imported)
    await writeFile(depths(), 'station,depth\n1,deep\n')
    expect((await again()).problems).toEqual((await fresh()).problems)
  })

  /** The same without anything kept. */
  const fresh = () => {
    useResults(undefined)
    return load()
  }
})

import { cp, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises'
import os from 'node:os'
import path from 'node:path'
import { unzipSync } from 'fflate'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { baseFor, standingIn } from '../../../src/cli/workbook/standing.ts'
import { readWorkbook } from '../../../src/read/workbook/read-workbook.ts'
import { withBase } from '../../../src/render/workbook/with-base.ts'
import { demoFolder } from '../../support/demo.ts'
import { fewestAnswers, filledIn } from '../../support/filled-workbooks.ts'
import { run } from '../support/run.ts'

let root = ''
beforeEach(async () => {
  root = await mkdtemp(path.join(os.tmpdir(), 'workbook-'))
})
afterEach(() => rm(root, { recursive: true, force: true }))

const text = (file: string): Promise<string> => readFile(path.join(root, file), 'utf8')

describe('npm run workbook', () => {
  it('makes a blank workbook in a folder that is not there yet, and the whole facility from it', async () => {
    const folder = path.join(root, 'our-fair')
    const made = await run('workbook', folder)
    expect([made.code, await readdir(folder)]).toEqual([0, ['facility.xlsx']])
    expect(made.out).toContain('blank')
    const filled = await filledIn({ data: {}, tables: {} }, 'us', [
      ...fewestAnswers({
        name: 'Our County Fair',
        town: 'Hollow Creek',
        units: 'us',
        paper: 'letter',
        lap: '2,640 ft',
        straight: '600 ft',
        material: 'stone-dust',
      }),
      { sheet: 'Fair', at: 'as-of', text: '6/14/2027' },
      { sheet: 'People to call', at: 'telephone', line: 0, text: '555-0100' },
    ])
    await writeFile(path.join(folder, 'facility.xlsx'), filled)
    const file = path.join(folder, 'facility.xlsx')
    const shown = await run('workbook', folder, file)
    expect(shown.out).toMatch(/Fair {15}5 read\n/)
    expect(shown.out).toMatch(/People to call {5}0 read, 1 not\n/)
    expect(shown.err).toContain(
      'sheet People to call, cell B5: error: "what they are there for" is missing',
    )
    expect(shown.err).toContain('With --yes')
    expect(await readdir(folder)).toEqual(['facility.xlsx'])

    expect((await run('workbook', folder, file, '--yes')).code).toBe(1)
    expect((await readdir(folder)).sort()).toEqual([
      'facility.schema.json',
      'facility.xlsx',
      'facility.yaml',
    ])
    expect((await run('check', folder)).code).toBe(0)
    // What could not be read is in the workbook still; only the note of what it was made of is new.
    const [now, then] = [await readFile(file), filled].map((bytes) => unzipSync(bytes))
    const differ = Object.keys(then ?? {}).filter(
      (part) =>
        Buffer.compare(Buffer.from(now?.[part] ?? []), Buffer.from(then?.[part] ?? [])) !== 0,
    )
    expect(differ).toHaveLength(1)
    const names = readWorkbook('facility.xlsx', await readFile(file)).value?.map((s) => s.name)
    expect(differ).toEqual([`xl/worksheets/sheet${names?.length}.xml`])
  })

  it('shows what a table says of a facility, enters it when told to, and makes its workbook anew', async () => {
    const folder = path.join(root, 'brambleford')
    await cp(demoFolder('brambleford'), folder, { recursive: true })
    await run('workbook', folder)
    await writeFile(path.join(root, 'prices.csv'), 'what;price\nprice of fuel;$1,50/L\n')
    const before = await text('brambleford/facility.yaml')
    const shown = await run('workbook', folder, path.join(root, 'prices.csv'))
    expect(shown.out).toContain('price of fuel (prices)   new: $1.50/L')
    expect(await text('brambleford/facility.yaml')).toBe(before)
    expect((await run('workbook', folder, path.join(root, 'prices.csv'), '--yes')).code).toBe(0)
    const after = await text('brambleford/facility.yaml')
    expect(after).toBe(`${before}prices:\n  fuel: $1.50/L\n`)
    // The workbook holds nothing that the file does not say, so a new one takes its place.
    expect((await run('workbook', folder)).code).toBe(0)
    expect((await run('workbook', folder, path.join(folder, 'facility.xlsx'))).out).toContain(
      'says all of this already',
    )
  })

  it('leaves a workbook alone that was filled in and not taken in', async () => {
    const typed = { sheet: 'Fair', at: 'name', text: 'Our County Fair' }
    const filled = await filledIn({ data: {}, tables: {} }, 'us', [typed])
    await writeFile(path.join(root, 'facility.xlsx'), filled)
    const { code, err } = await run('workbook', root)
    expect([code, err]).toEqual([2, expect.stringContaining('Take it in:')])
    expect(await readFile(path.join(root, 'facility.xlsx'))).toEqual(Buffer.from(filled))
  })

  it('says why a file cannot be taken in: too large, not there, another document', async () => {
    await writeFile(path.join(root, 'large.xlsx'), new Uint8Array(9 * 1024 * 1024))
    expect((await run('workbook', root, path.join(root, 'large.xlsx'))).err).toContain(
      'larger than',
    )
    expect((await run('workbook', root, path.join(root, 'none.csv'))).err).toContain(
      'there is no file',
    )
    await writeFile(path.join(root, 'letter.csv'), '{\\rtf1 hello}')
    expect((await run('workbook', root, path.join(root, 'letter.csv'))).err).toContain('rich-text')
    await writeFile(path.join(root, 'facility.yaml'), 'id: [\n')
    expect((await run('workbook', root)).code).toBe(1)
    expect((await run('workbook', root, '--units', 'feet')).code).toBe(2)
  })
})

describe('what the command says', () => {
  it('names a folder with spaces in quotes, and says what to type where it is told nothing', async () => {
    const made = await run('workbook', path.join(root, 'Our Fair'))
    expect(made.out).toMatch(/npm run workbook -- ".*Our Fair" ".*Our Fair\/facility\.xlsx"/)
    const bare = await run('workbook')
    expect([bare.code, bare.err]).toEqual([2, expect.stringContaining('Name the folder')])
  })

  it('shows every change under its sheet, and keeps the workbook that was there', async () => {
    const folder = path.join(root, 'brambleford')
    await cp(demoFolder('brambleford'), folder, { recursive: true })
    await run('workbook', folder)
    const { standing } = await standingIn(folder, '2027-06-01')
    if (!standing) throw new Error('brambleford has faults')
    const file = path.join(folder, 'facility.xlsx')
    const typed = [
      { sheet: 'Oval', at: 'oval.straight', text: '181 m' },
      { sheet: 'Prices', at: 'prices.fuel', text: '1.50 €/L' },
    ]
    await writeFile(file, await filledIn(baseFor(standing), 'metric', typed))
    const taken = await run('workbook', folder, file, '--yes')
    expect(taken.out).toMatch(
      /It would change:\n {2}Oval\n {4}B5 .*180 m → 181 m\n {2}Prices\n {4}B7 /,
    )
    expect(taken.out).toContain('This was noted in facility.xlsx')
    // It is put back as it was: a change like any other.
    const back = withBase(
      await filledIn(baseFor(standing), 'metric', []),
      baseFor((await standingIn(folder, '2027-06-01')).standing ?? standing),
    )
    await writeFile(file, back ?? '')
    expect((await run('workbook', folder, file, '--yes')).out).toMatch(/181 m → 180 m/)
    await writeFile(
      path.join(folder, 'facility.yaml'),
      `${await text('brambleford/facility.yaml')}\n`,
    )
    expect((await run('workbook', folder)).out).toContain('is kept as "facility (before ')
    expect(await readdir(folder)).toContainEqual(
      expect.stringMatching(/^facility \(before .*\)\.xlsx$/),
    )
  })
})

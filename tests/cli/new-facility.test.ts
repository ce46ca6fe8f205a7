import { mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises'
import os from 'node:os'
import path from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { parse } from 'yaml'
import { answers, filledIn } from '../../src/cli/new-facility.ts'
import { readYaml } from '../../src/read/read-yaml.ts'
import { checkFacility } from '../../src/validate/check-facility.ts'
import { run } from './support/run.ts'

let root: string
beforeEach(async () => {
  root = await mkdtemp(path.join(os.tmpdir(), 'new-'))
})
afterEach(() => rm(root, { recursive: true, force: true }))

describe('a new facility', () => {
  it('is a folder with a file of its own and the schema that it names', async () => {
    const folder = path.join(root, 'our-fair')
    const { code, out } = await run('new', folder)
    expect(code).toBe(0)
    expect(out).toContain('npm run manual -- ')
    expect((await readdir(folder)).sort()).toEqual(['facility.schema.json', 'facility.yaml'])
    const text = await readFile(path.join(folder, 'facility.yaml'), 'utf8')
    expect(text).toMatch(/^# yaml-language-server: \$schema=\.\/facility\.schema\.json\n/)
    expect(parse(text)).toMatchObject({ name: null, units: 'us', paper: 'letter' })
    // What is still to be filled in is asked for, line by line.
    const { code: checked, err } = await run('check', folder)
    expect(checked).toBe(1)
    expect(err).toContain('nothing stands behind "name:"')
  })

  it('never touches a file that is there', async () => {
    await writeFile(path.join(root, 'facility.yaml'), 'mine\n')
    expect((await run('new', root)).code).toBe(2)
    expect(await readFile(path.join(root, 'facility.yaml'), 'utf8')).toBe('mine\n')
    expect(await readdir(root)).toEqual(['facility.yaml'])
  })
})

describe('questions on the terminal', () => {
  const said: string[] = []
  const io = {
    out: () => undefined,
    err: (text: string) => said.push(text),
    colors: false,
    terminal: true,
    env: {},
    cwd: '/',
    today: '2027-06-14',
  }
  const asked = (...replies: string[]) => answers(async () => replies.shift() ?? '', io)

  it('are asked again where an answer is no length, and take a number alone', async () => {
    const given = await asked('Tiny Fair', 'Nowhere', '', 'half of it', '2640', '600 ft')
    expect(given).toEqual({
      name: 'Tiny Fair',
      town: 'Nowhere',
      metric: false,
      lap: '2640 ft',
      straight: '600 ft',
    })
    expect(said.join('\n')).toContain('does not begin with a number')
  })

  it('fill the file in, which then lacks the material alone', async () => {
    const given = await asked('Tiny & Söhne: Fair #2', 'Nowhere', 'm', '804.7', '180')
    const text = filledIn(given, 'America/Toronto')
    const data: unknown = parse(text)
    expect(data).toMatchObject({
      id: 'tiny-sohne-fair-2',
      name: 'Tiny & Söhne: Fair #2',
      place: { town: 'Nowhere', 'time-zone': 'America/Toronto' },
      units: 'metric',
      paper: 'a4',
      oval: { lap: '804.7 m', straight: '180 m' },
    })
    const { value } = readYaml({ path: 'f', text: text.replace(/^( {2}material):$/m, '$1: clay') })
    expect(value && checkFacility(value).problems).toEqual([])
  })
})

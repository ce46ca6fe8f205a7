import { cp, mkdir, mkdtemp, readdir, readFile, rm, symlink, writeFile } from 'node:fs/promises'
import os from 'node:os'
import path from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { build } from '../../src/cli/build.ts'
import { badBuilds, edited } from '../support/bad-input.ts'
import { date, demoFolder, folders } from '../support/demo.ts'
import { ioIn } from '../support/io.ts'

const cases = await badBuilds()

let root: string
let said: string
const fair = (): string => path.join(root, 'fair')
const out = (): string => path.join(root, 'out')

const io = () => ioIn(root, (line) => (said += `${line}\n`))

const run = (): Promise<number> => build([fair()], { into: out(), date, quiet: true }, io())

const change = async (file: string, edit: (text: string) => string): Promise<void> =>
  writeFile(path.join(fair(), file), edit(await readFile(path.join(fair(), file), 'utf8')))

beforeEach(async () => {
  said = ''
  root = await mkdtemp(path.join(os.tmpdir(), 'bad-'))
  await cp(demoFolder('brambleford'), fair(), { recursive: true })
})
afterEach(() => rm(root, { recursive: true, force: true }))

const ownProcedure = async (edit: (text: string) => string): Promise<void> => {
  await mkdir(path.join(fair(), 'procedures'))
  const text = await readFile(path.join(folders.content, 'procedures', 'deep.yaml'), 'utf8')
  await writeFile(
    path.join(fair(), 'procedures', 'own.yaml'),
    edit(text.replace(/^id: deep$/m, 'id: own')),
  )
}

describe('a build', () => {
  it('without any browser still makes site and figures, says what to install, and exits with 3', async () => {
    expect(await run()).toBe(3)
    expect(said).toContain('OVALKEEP_BROWSER names a browser that does not work')
    const files = await readdir(path.join(out(), 'brambleford'))
    expect(files.sort()).toEqual([
      'THIRD-PARTY-NOTICES.txt',
      'build.json',
      'calendars',
      'figures.json',
      'manual.html',
      'site',
      'tables',
    ])
  })

  it('without any browser leaves the printed files of the last build, marked as old, and what somebody put there', async () => {
    const target = path.join(out(), 'brambleford')
    await mkdir(path.join(target, 'site'), { recursive: true })
    const revision = { revision: '0', date: '2026-05-01', pages: [] }
    const record = {
      files: ['binder.pdf', 'site/binder.pdf', 'site/gone.html'].map((name) => ({ path: name })),
      binder: { labels: { seal: '2-1' }, pages: { seal: 3 }, revision },
      fieldBook: { pages: 20 },
    }
    await writeFile(path.join(target, 'build.json'), JSON.stringify(record))
    for (const name of ['binder.pdf', 'site/binder.pdf', 'site/gone.html', 'site/photo.jpg'])
      await writeFile(path.join(target, name), name)
    expect(await run()).toBe(3)
    expect(said).toContain(
      'The 2 PDFs of an earlier build stay; they are of REVISION 0, 2026-05-01',
    )
    expect(await readFile(path.join(target, 'binder.pdf'), 'utf8')).toBe('binder.pdf')
    const site = await readdir(path.join(target, 'site'))
    expect(site).toEqual(expect.arrayContaining(['binder.pdf', 'photo.jpg']))
    expect(site).not.toContain('gone.html')
    const home = await readFile(path.join(target, 'site', 'index.html'), 'utf8')
    expect(home).toContain('OLD: revision 0, 2026-05-01')
    // What is known of the binder in use is not forgotten.
    const kept = JSON.parse(await readFile(path.join(target, 'build.json'), 'utf8'))
    expect(kept).toMatchObject({ older: { revision: '0' }, binder: { labels: { seal: '2-1' } } })
    // A second build without a browser says the same.
    said = ''
    expect(await run()).toBe(3)
    expect(said).toContain('REVISION 0, 2026-05-01')
    expect(await readdir(path.join(target, 'site'))).toContain('photo.jpg')
  })

  it('without any browser writes nothing where PDFs are needed', async () => {
    expect(await build([fair()], { into: out(), date, needPdfs: true }, io())).toBe(3)
    expect(said).toContain('Nothing was written')
    expect(await readdir(root)).not.toContain('out')
  })

  it('into a place where nothing can be written is refused before the work', async () => {
    await writeFile(out(), 'a file')
    expect(await run()).toBe(5)
    expect(said).toContain('a file where a folder was meant')
  })

  it('takes up procedures and notes that the facility brings along', async () => {
    await ownProcedure((t) => t.replace('title: Surface too deep', 'title: Our own way'))
    await change(
      'facility.yaml',
      (t) => `${t}\nnotes:\n  - procedure: own\n    text: Ask **Theo** first.\n`,
    )
    expect(await run()).toBe(3)
    expect(
      await readFile(path.join(out(), 'brambleford', 'site', 'procedures', 'own.html'), 'utf8'),
    ).toContain('Ask <strong>Theo</strong> first.')
  })
})

describe('bad input leaves the last good build alone and is pointed at:', () => {
  it.each(cases.map((c) => [c.name, c] as const))('%s', async (_, fault) => {
    await mkdir(path.join(out(), 'brambleford'), { recursive: true })
    await writeFile(path.join(out(), 'brambleford', 'good'), 'last good build')
    const spoil = (text: string): string => edited(text, fault)
    await (fault.edit === 'own.yaml' ? ownProcedure(spoil) : change(fault.edit, spoil))
    for (const [name, text] of Object.entries(fault.write))
      await writeFile(path.join(fair(), name), text)
    expect(await run()).toBe(1)
    for (const pattern of fault.says) expect(said).toMatch(new RegExp(pattern))
    expect(await readdir(path.join(out(), 'brambleford'))).toEqual(['good'])
    expect(await readdir(out())).toEqual(['brambleford'])
  })

  it('a file that is too large, and one that is not there', async () => {
    await change('facility.yaml', () => 'x: 1\n'.repeat(300_000))
    expect(await run()).toBe(1)
    expect(said).toContain('[file/too-large]')
    await rm(path.join(fair(), 'facility.yaml'))
    expect(await run()).toBe(1)
    expect(said).toContain('[file/missing]')
  })

  it('a file that leads out of the folder', async () => {
    await writeFile(path.join(root, 'secret.yaml'), 'id: secret\n')
    await rm(path.join(fair(), 'facility.yaml'))
    await symlink(path.join(root, 'secret.yaml'), path.join(fair(), 'facility.yaml'))
    expect(await run()).toBe(1)
    expect(said).toContain('[file/outside]')
  })

  it('several faults of several files, all in one run', async () => {
    await ownProcedure((t) => t.replace('next: harrow', 'next: harow'))
    await change('facility.yaml', (t) =>
      t.replace('180 m', '180 mm').replace('paper: a4', 'paper: a5'),
    )
    expect(await run()).toBe(1)
    for (const code of ['quantity/range', 'schema/choice', 'ref/missing'])
      expect(said).toContain(`[${code}]`)
    expect(said).toContain('3 errors, 0 warnings in 2 files')
  })

  it('a date that does not exist', async () => {
    expect(await build([fair()], { into: out(), date: '2027-02-31' }, io())).toBe(2)
  })
})

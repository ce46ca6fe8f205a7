import { cp, mkdir, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises'
import os from 'node:os'
import path from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type BuildOptions, build } from '../../src/cli/build.ts'
import { partOf } from '../../src/cli/many/part.ts'
import { date } from '../support/demo.ts'
import { ioIn } from '../support/io.ts'
import { madeUpFair } from '../support/made-up-fairs.ts'

let root: string
let said: string
const fair = (name: string): string => path.join(root, 'fairs', name)
const out = (...below: string[]): string => path.join(root, 'out', ...below)

const io = () => ioIn(root, (line) => (said += `${line}\n`))

const run = (named: readonly string[], options: BuildOptions = {}): Promise<number> => {
  said = ''
  return build(named, { into: out(), date, ...options }, io())
}

beforeAll(async () => {
  root = await mkdtemp(path.join(os.tmpdir(), 'many-'))
  for (const [i, name] of ['one', 'two', 'bad', 'shut'].entries()) {
    await mkdir(fair(name), { recursive: true })
    const text = madeUpFair(i + 1).text.replace(/^id: .*$/m, `id: fair-${name}`)
    const spoilt = text.replace(/^cushion: .*$/m, 'cushion: { material: butter }')
    await writeFile(path.join(fair(name), 'facility.yaml'), name === 'bad' ? spoilt : text)
  }
  // A file stands where a folder is to be made.
  await mkdir(out(), { recursive: true })
  await writeFile(out('fair-shut'), 'a file')
})
afterAll(() => rm(root, { recursive: true, force: true }))

describe('several facilities by one command', () => {
  it('are each made, whatever becomes of the others, and summed up in a table', async () => {
    expect(await run(['fairs/*'])).toBe(5)
    expect((await readdir(out())).sort()).toEqual(['fair-one', 'fair-shut', 'fair-two'])
    expect(said).toMatch(/^\[\d\/4\] fairs\/bad\nfairs\/bad\/facility\.yaml:\d+:\d+: error/m)
    expect(said).toMatch(/^fair-bad +not made: its files have errors$/m)
    expect(said).toMatch(/^fair-one +\d+ +no PDFs +\d+ +\d+\.\d$/m)
    expect(said).toMatch(/^fair-shut +not made: cannot be written$/m)
    expect(said).toMatch(/^2 of 4 made, 2 not: why stands above; \d+\.\d s$/m)
    // Why there are no PDFs is so of all, and said once.
    expect(said.match(/OVALKEEP_BROWSER names/g)).toHaveLength(1)
  })

  it('give the same bytes as each by itself', async () => {
    const hash = async (folder: string): Promise<string> =>
      readFile(path.join(folder, 'fair-two', 'build.json'), 'utf8')
    await build([fair('two')], { into: path.join(root, 'single'), date, quiet: true }, io())
    expect(await hash(path.join(root, 'single'))).toBe(await hash(out()))
  })

  it('are told before the work where two have the same id', async () => {
    await cp(fair('one'), path.join(root, 'more', 'copy'), { recursive: true })
    expect(await run(['fairs/one', 'more/copy'])).toBe(1)
    expect(said).toContain('The same id, fair-one, stands in fairs/one and more/copy')
    expect(said).not.toContain('[1/')
  })

  it('are told where a folder is none', async () => {
    expect(await run(['fairs/none', 'fairs/nothing'])).toBe(1)
    expect(said).toContain('fairs/none is no folder of a facility')
  })

  it('fall into parts of which each makes its own', async () => {
    const part = partOf('fair-two', 3)
    expect(await run(['fairs/two'], { part: `${part}/3`, into: path.join(root, 'part') })).toBe(3)
    expect(said).toContain(`Part ${part} of 3: 1 of 1 facilities`)
    const other = (part % 3) + 1
    expect(await run(['fairs/two'], { part: `${other}/3` })).toBe(0)
    expect(said).toContain(`Part ${other} of 3: 0 of 1 facilities`)
    expect(await run(['fairs/two'], { part: '4/3' })).toBe(2)
    expect(await run([], { part: '1/3' })).toBe(2)
  })
})

import { describe, expect, it } from 'vitest'
import { readTree } from '../../src/cli/load/read-tree.ts'
import { readYaml } from '../../src/read/read-yaml.ts'
import type { Library } from '../../src/validate/check-library.ts'
import { checkNotSaid } from '../../src/validate/check-not-said.ts'
import { folders, loadDemo } from '../support/demo.ts'

async function library(): Promise<Library> {
  const { library: found } = await loadDemo('larkmoor')
  if (!found) throw new Error('no library')
  return found
}

const said = async (list: string): Promise<string[]> => {
  const tree = readYaml({ path: 'not-said.yaml', text: list }).value
  if (!tree) throw new Error('no tree')
  return checkNotSaid(await library(), tree).map(
    ({ message, hint, place, severity }) =>
      `${place.file}:${place.line > 0} ${severity} ${message} | ${hint}`,
  )
}

describe('words that readers would not say', () => {
  it('are found whole, however they are written, with what to say instead', async () => {
    expect(await said('words: { "Begin with WHAT the track shows": start }')).toEqual([])
    expect(await said('words: { "start with WHAT the track shows": begin }')).toEqual([
      'content/words.yaml:true warning nobody would say "Start with what the track shows" | rather: begin',
    ])
    expect(await said('words: { "tart with what": begin }')).toEqual([])
  })

  it('are listed in a file of its own form', async () => {
    expect((await said('words: [a, b]')).join()).toMatch(/not-said\.yaml:true error/)
  })

  it('stand nowhere in the library', async () => {
    const { value } = await readTree(folders.content, 'not-said.yaml', 'content')
    if (!value) throw new Error('no list')
    const found = checkNotSaid(await library(), value)
    expect(found.map((p) => `${p.place.file}:${p.place.line} ${p.message}`)).toEqual([])
  })
})

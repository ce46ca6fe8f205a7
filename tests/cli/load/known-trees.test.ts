import { mkdtemp, readdir, rm, writeFile } from 'node:fs/promises'
import os from 'node:os'
import path from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { knownTrees, useKnownTrees } from '../../../src/cli/load/known-trees.ts'
import { readTree } from '../../../src/cli/load/read-tree.ts'
import { folders } from '../../support/demo.ts'

let root: string

const read = () => readTree(root, 'a.yaml', 'shown')

const put = (text: string): Promise<void> => writeFile(path.join(root, 'a.yaml'), text)

beforeEach(async () => {
  root = await mkdtemp(path.join(os.tmpdir(), 'trees-'))
  useKnownTrees(path.join(root, 'cache'), folders)
})

afterEach(async () => {
  useKnownTrees(undefined, folders)
  await rm(root, { recursive: true, force: true })
})

/** As another command would read it. */
async function readAgain() {
  knownTrees()?.save()
  useKnownTrees(undefined, folders)
  useKnownTrees(path.join(root, 'cache'), folders)
  return read()
}

describe('a file that was read before', () => {
  it('says the same, and still knows where everything stands', async () => {
    await put('first: 1\nlist:\n  - { name: one }\n  - { name: two, other: .nan }\n')
    const { value: before } = await read()
    const { value: after, problems } = await readAgain()
    expect(problems).toEqual([])
    expect(after?.data).toEqual(before?.data)
    const at = ['list', 1, 'name']
    expect(after?.placeOf(at)).toEqual(before?.placeOf(at))
    expect(after?.keyPlaceOf(at)).toEqual(before?.keyPlaceOf(at))
    expect(after?.placeOf(at)).toMatchObject({ file: 'shown/a.yaml', line: 4 })
  })

  it('is read anew when it has changed', async () => {
    await put('first: 1\n')
    await read()
    await put('first: 2\n')
    expect((await readAgain()).value?.data).toEqual({ first: 2 })
  })

  it('has the same faults each time', async () => {
    await put('first: 1\nfirst: 2\n')
    const { problems } = await read()
    expect(problems.length).toBeGreaterThan(0)
    expect((await readAgain()).problems).toEqual(problems)
    expect(await readdir(root)).toEqual(['a.yaml'])
  })
})

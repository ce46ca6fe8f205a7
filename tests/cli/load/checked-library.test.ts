import { mkdtemp, rm } from 'node:fs/promises'
import os from 'node:os'
import path from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { openResults, useResults } from '../../../src/cli/kept/kept-results.ts'
import { type Folders, type LoadedManual, loadManual } from '../../../src/cli/load/load-manual.ts'
import type { Library, Sourced } from '../../../src/validate/check-library.ts'
import { date, demoFolder, demos, folders, loadDemo } from '../../support/demo.ts'
import { nonsenseFacility, withNonsense } from '../../support/nonsense-language.ts'

let root: string

beforeEach(async () => {
  root = await mkdtemp(path.join(os.tmpdir(), 'library-'))
})

afterEach(async () => {
  useResults(undefined)
  await rm(root, { recursive: true, force: true })
})

/** All that a library holds, and where it stands; schemas are compared as what they are. */
function contents({ words, ...lists }: Library): unknown {
  const one = ({ value, tree, path: at, schema }: Sourced<unknown>) => ({
    value,
    file: tree.file,
    at,
    schema: { is: schema },
    place: tree.placeOf(at),
  })
  const parts = Object.entries(lists as Readonly<Record<string, unknown>>).map(([name, part]) => [
    name,
    [part].flat().map((item) => one(item as Sourced<unknown>)),
  ])
  return [words, parts]
}

/** A manual as a command has it that finds the library checked. */
async function loadedAgain(facility: string, of: Folders): Promise<LoadedManual> {
  // Another process each time.
  useResults(openResults(root, 'program'))
  await loadManual(facility, of, date)
  useResults(openResults(root, 'program'))
  return loadManual(facility, of, date)
}

describe('a library that was checked before', () => {
  it.each(demos)('is the same for %s', async (id) => {
    const fresh = await loadDemo(id)
    const known = await loadedAgain(demoFolder(id), folders)
    expect(fresh.library).toBeDefined()
    expect(contents(known.library as Library)).toStrictEqual(contents(fresh.library as Library))
    expect(known.problems).toEqual(fresh.problems)
    expect({ ...known.manual }).toStrictEqual({ ...fresh.manual })
  })

  it('is the same in another language', async () => {
    const of = await withNonsense()
    const facility = await nonsenseFacility('brambleford', of)
    const fresh = await loadManual(facility, of, date)
    const known = await loadedAgain(facility, of)
    expect(contents(known.library as Library)).toStrictEqual(contents(fresh.library as Library))
    await rm(path.dirname(of.content), { recursive: true, force: true })
  })
})

import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises'
import os from 'node:os'
import path from 'node:path'
import { inject } from 'vitest'
import { type LoadedManual, loadManual } from '../../src/cli/load/load-manual.ts'
import type { Manual } from '../../src/model/manual.ts'
import type { Words } from '../../src/validate/schemas/words.ts'
import { date, folders, testsFolder } from './demo.ts'

/** A half mile with a harrow, a water truck, two race days and a survey of nine readings. */
export const smallFacility = path.join(testsFolder, 'fixtures', 'small', 'facility')

/** The project's folders, with a library of two procedures. */
const smallFolders = { ...folders, content: inject('smallContent') }

let loaded: Promise<LoadedManual> | undefined

export function loadSmall(): Promise<LoadedManual> {
  loaded ??= loadManual(smallFacility, smallFolders, date)
  return loaded
}

function whole({ manual, library, problems }: LoadedManual): { manual: Manual; words: Words } {
  if (!manual || !library)
    throw new Error(problems.map((p) => `${p.place.file}:${p.place.line} ${p.message}`).join('\n'))
  return { manual, words: library.words }
}

export const smallManual = async (): Promise<{ manual: Manual; words: Words }> =>
  whole(await loadSmall())

/** The manual of a facility that has no other files, with the small library. */
export async function manualOf(text: string): Promise<{ manual: Manual; words: Words }> {
  const folder = await mkdtemp(path.join(os.tmpdir(), 'facility-'))
  try {
    await writeFile(path.join(folder, 'facility.yaml'), text)
    return whole(await loadManual(folder, smallFolders, date))
  } finally {
    await rm(folder, { recursive: true, force: true })
  }
}

export const smallFacilityText = (): Promise<string> =>
  readFile(path.join(smallFacility, 'facility.yaml'), 'utf8')

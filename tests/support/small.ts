import { cp, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises'
import os from 'node:os'
import path from 'node:path'
import { inject } from 'vitest'
import { type LoadedManual, loadManual } from '../../src/cli/load/load-manual.ts'
import type { Manual } from '../../src/model/manual.ts'
import type { Words } from '../../src/validate/schemas/words.ts'
import { date, folders, testsFolder } from './demo.ts'

/** A half mile with a harrow, a water truck, two race days and a survey of nine readings. */
const smallFacility = path.join(testsFolder, 'fixtures', 'small', 'facility')

/** The project's folders, with a library of two procedures. */
const smallFolders = { ...folders, content: inject('smallContent') }

let loaded: Promise<LoadedManual> | undefined

export function loadSmall(): Promise<LoadedManual> {
  loaded ??= loadManual(smallFacility, smallFolders, date)
  return loaded
}

type Whole = { readonly manual: Manual; readonly words: Words }

function whole({ manual, library, problems }: LoadedManual): Whole {
  if (!manual || !library)
    throw new Error(problems.map((p) => `${p.place.file}:${p.place.line} ${p.message}`).join('\n'))
  return { manual, words: library.words }
}

export const smallManual = async (): Promise<Whole> => whole(await loadSmall())

async function manualIn(fill: (folder: string) => Promise<void>) {
  const folder = await mkdtemp(path.join(os.tmpdir(), 'facility-'))
  try {
    await fill(folder)
    return whole(await loadManual(folder, smallFolders, date))
  } finally {
    await rm(folder, { recursive: true, force: true })
  }
}

/** The manual of a facility that has no other files, with the small library. */
export const manualOf = (text: string): Promise<Whole> =>
  manualIn((folder) => writeFile(path.join(folder, 'facility.yaml'), text))

/** The manual of the small facility with another text in its file. */
export const changedSmallManual = (change: (text: string) => string): Promise<Whole> =>
  manualIn(async (folder) => {
    await cp(smallFacility, folder, { recursive: true })
    const file = path.join(folder, 'facility.yaml')
    await writeFile(file, change(await readFile(file, 'utf8')))
  })

/** What a facility file must say at the least. */
export const bareFacility = `
id: bare
name: Bare Fair
place: { town: Nowhere }
units: us
paper: letter
oval: { lap: "2,640 ft", straight: 600 ft }
cushion: { material: clay }
`

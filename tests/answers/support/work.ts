import { readdirSync, readFileSync } from 'node:fs'
import path from 'node:path'
import { type WorkGiven, workWith } from '../../../src/answers/work-with.ts'
import { loadSources } from '../../../src/cli/load/load-library.ts'
import { date, demoFolder, folders, loadDemo } from '../../support/demo.ts'

/** The files of a demo by their names. */
export const demoFiles = (id: string): ReadonlyMap<string, string> =>
  new Map(
    readdirSync(demoFolder(id), { withFileTypes: true })
      .filter((f) => f.isFile())
      .map((f) => [f.name, readFileSync(path.join(demoFolder(id), f.name), 'utf8')]),
  )

/** The project's library, ready to work answers out with. */
export async function workHere(): Promise<ReturnType<typeof workWith>> {
  const { library } = await loadDemo('brambleford')
  if (!library) throw new Error('the library has faults')
  const sources = await loadSources(folders.shared)
  const given: WorkGiven = {
    library,
    sources,
    today: date,
    unnamed: { fair: 'Our fair', town: 'our town' },
  }
  return workWith(given)
}

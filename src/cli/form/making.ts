import path from 'node:path'
import { type MakingEvent, type MakingStage, makingStages } from '../../model/form-exchange.ts'
import { findBrowser } from '../../print/browser/find-browser.ts'
import { keepBrowser } from '../../print/browser/keep-browser.ts'
import { buildOne } from '../build-one.ts'
import type { Io } from '../io.ts'
import type { Folders } from '../load/load-manual.ts'
import type { Progress } from '../progress.ts'
import { unwritable, userFault } from '../user-fault.ts'
import { madePath } from './made-site.ts'

/** Tells the page which stage begins. */
const progressFor = (tell: (event: MakingEvent) => void): Progress => ({
  stage: async (name, work) => {
    const stage = makingStages.find((known): known is MakingStage => known === name)
    if (stage) tell({ kind: 'stage', stage })
    // What is told reaches the page before this process is busy.
    await new Promise((done) => setTimeout(done, 20))
    return work(() => undefined)
  },
})

async function build(
  folder: string,
  folders: Folders,
  io: Io,
  tell: (event: MakingEvent) => void,
): Promise<string | undefined> {
  const closed = await unwritable(folders.dist)
  if (closed !== undefined) {
    tell({ kind: 'failed', why: closed })
    return undefined
  }
  const said: string[] = []
  const err = (text: string): void => void said.push(text)
  const browser = keepBrowser(() => findBrowser(io.env))
  try {
    const { made } = await buildOne({
      facility: folder,
      date: undefined,
      quiet: true,
      needPdfs: false,
      folders,
      progress: progressFor(tell),
      browser,
      io: { ...io, err, colors: false, terminal: false },
    })
    if (!made) {
      tell({ kind: 'failed', why: said.join('\n') })
      return undefined
    }
    const why = made.unprinted?.why ?? ''
    tell({ kind: 'made', address: madePath, where: made.target, why })
    return path.join(made.target, 'site')
  } finally {
    await browser.close()
  }
}

/**
 * Makes the manual of a folder as `build` does, and tells how far it is.
 * @returns the folder `site/` of it; undefined where it could not be made, and why has been told.
 */
export async function makeFor(
  folder: string,
  folders: Folders,
  io: Io,
  tell: (event: MakingEvent) => void,
): Promise<string | undefined> {
  try {
    return await build(folder, folders, io, tell)
  } catch (error) {
    io.err(error instanceof Error ? (error.stack ?? error.message) : String(error))
    tell({ kind: 'failed', why: userFault(error) ?? String(error) })
    return undefined
  }
}

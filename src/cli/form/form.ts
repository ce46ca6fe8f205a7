import { randomBytes } from 'node:crypto'
import { stat } from 'node:fs/promises'
import path from 'node:path'
import open from 'open'
import { cacheFolder } from '../../print/browser/cache-folder.ts'
import { thisMachine } from '../../print/browser/machine.ts'
import { facilityFolder, projectFolders } from '../folders.ts'
import { type ExitCode, exit, type Io } from '../io.ts'
import { loadFormPage } from '../load/load-form-page.ts'
import type { Folders } from '../load/load-manual.ts'
import { interrupted, type Listening, portFor, portText } from '../loopback/listen.ts'
import { unwritable } from '../user-fault.ts'
import { createDesk, type Desk } from './desk.ts'
import { draftsIn } from './drafts.ts'
import { makeFor } from './making.ts'
import { serveForm } from './serve-form.ts'

export type FormOptions = {
  /** Port on the loopback address, as typed; 0 lets the system choose. */
  readonly port: string
  /** Whether the browser of this computer shows the page at once. */
  readonly open: boolean
}

/** Why a folder cannot be used; undefined where it can. */
async function closed(folder: string): Promise<string | undefined> {
  const info = await stat(folder).catch(() => undefined)
  if (info && !info.isDirectory())
    return `${folder} is a file. Name the folder of a fair, or one that is not there yet.`
  return unwritable(folder)
}

/** Where the folders of fairs are kept that are begun on the page. */
const fairsFolder = (io: Io): string => path.join(thisMachine(io.env).home, 'ovalkeep')

async function deskFor(folder: string | undefined, folders: Folders, io: Io): Promise<Desk> {
  const cache = await cacheFolder(thisMachine(io.env)).catch(() => undefined)
  return createDesk({
    folder,
    home: fairsFolder(io),
    near: [io.cwd],
    drafts: draftsIn(cache),
    makeManual: (of, tell) => makeFor(of, folders, io, tell),
  })
}

/**
 * Shows the page on which a facility file is filled in, on the loopback address. It writes into the
 * folder that is named or chosen, and runs until the process is interrupted.
 */
export async function form(
  named: string | undefined,
  options: FormOptions,
  io: Io,
): Promise<ExitCode> {
  const port = portFor(options.port, io)
  if (port === undefined) return exit.usage
  const folders = projectFolders()
  const folder = named === undefined ? undefined : facilityFolder(named, io.cwd, folders)
  const why = await closed(folder ?? fairsFolder(io))
  if (why !== undefined) {
    io.err(why)
    return exit.unwritable
  }
  const [desk, page] = await Promise.all([deskFor(folder, folders, io), loadFormPage(folders)])
  const key = randomBytes(24).toString('base64url')
  let server: Listening
  try {
    server = await serveForm(desk, page, key, port)
  } catch (fault) {
    io.err(portText(port, fault))
    return exit.usage
  }
  const address = `${server.address}?key=${key}`
  io.out(`The form is open at ${address}\nIt answers on this computer only. Stop it with Ctrl-C.`)
  // A computer without a browser or a screen still has the address.
  if (options.open) await open(address).catch(() => undefined)
  await interrupted()
  await server.close()
  return exit.fine
}

import { createHash, randomBytes } from 'node:crypto'
import { lstat, mkdir, open, readdir, readFile, realpath, rename, rm, stat } from 'node:fs/promises'
import path from 'node:path'
import { facilityFile } from '../../model/form-exchange.ts'
import { tableText } from '../../read/table-text.ts'
import { largestWorkbook } from '../../read/workbook/read-workbook.ts'
import { pathBelow } from '../load/shown-path.ts'

/** No facility file or table comes near this. */
export const largest = 1024 * 1024

/** Files that a facility file may name beside workbooks. */
const readable = /\.(?:csv|gpx|geojson|json)$/i

const isWorkbook = (name: string): boolean => /\.xlsx$/i.test(name)

const isMissing = (error: unknown): boolean => (error as NodeJS.ErrnoException).code === 'ENOENT'

/** Stands for what a file says; of a file that is not there, for that. */
export const tagOf = (text: string | undefined): string =>
  text === undefined ? 'none' : createHash('sha256').update(text).digest('hex').slice(0, 32)

/** A file of the folder; undefined where it is not there, or leads out of it. */
async function bytesAt(name: string, folder: string): Promise<Uint8Array | undefined> {
  try {
    const real = await realpath(path.join(folder, name))
    if (pathBelow(await realpath(folder), real) === undefined) return undefined
    const { size } = await stat(real)
    if (size > (isWorkbook(name) ? largestWorkbook : largest))
      throw new RangeError(`${name} is too large for a file of a fair`)
    return await readFile(real)
  } catch (error) {
    if (isMissing(error)) return undefined
    throw error
  }
}

/** A text file, as it stands in UTF-8, mark of order included; undefined where it is not there. */
async function textAt(name: string, folder: string): Promise<string | undefined> {
  const bytes = await bytesAt(name, folder)
  if (!bytes) return undefined
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes)
  } catch {
    throw new RangeError(`${name} is no UTF-8 text`)
  }
}

/** What stands in a table, in whatever encoding its spreadsheet has saved it. */
async function tableAt(name: string, folder: string): Promise<string | undefined> {
  const bytes = await bytesAt(name, folder)
  return bytes && tableText(bytes)
}

const namesIn = (folder: string): Promise<readonly string[]> =>
  readdir(folder).then(
    (names) => names.sort(),
    () => [],
  )

/** Files by their path in the folder. */
type FolderFiles = {
  readonly texts: ReadonlyMap<string, string>
  readonly workbooks: ReadonlyMap<string, Uint8Array>
}

async function each<T>(
  names: readonly string[],
  read: (name: string) => Promise<T | undefined>,
): Promise<readonly (readonly [string, T])[]> {
  const files = await Promise.all(names.map(async (name) => [name, await read(name)] as const))
  return files.flatMap(([name, file]) => (file === undefined ? [] : [[name, file] as const]))
}

/**
 * What a facility is made of in its folder.
 * @throws RangeError when a file is too large, or one of YAML no UTF-8 text.
 */
export async function filesIn(folder: string): Promise<FolderFiles> {
  const names = await namesIn(folder)
  const procedures = (await namesIn(path.join(folder, 'procedures')))
    .filter((name) => name.endsWith('.yaml'))
    .map((name) => `procedures/${name}`)
  const tables = names.filter((name) => readable.test(name) && !name.endsWith('.schema.json'))
  const texts = [
    ...(await each([facilityFile, ...procedures], (name) => textAt(name, folder))),
    ...(await each(tables, (name) => tableAt(name, folder))),
  ]
  const workbooks = await each(names.filter(isWorkbook), (name) => bytesAt(name, folder))
  return { texts: new Map(texts), workbooks: new Map(workbooks) }
}

/** Writes a file whole or not at all; what was there stays until the new one is on the disk. */
export async function replaceFile(file: string, text: string): Promise<void> {
  const own = `${file}.${randomBytes(6).toString('hex')}.part`
  const mode = await lstat(file).then(
    (info) => info.mode & 0o777,
    () => 0o666,
  )
  try {
    const handle = await open(own, 'wx', mode)
    try {
      await handle.writeFile(text, 'utf8')
      await handle.sync()
    } finally {
      await handle.close()
    }
    await rename(own, file)
  } catch (error) {
    await rm(own, { force: true })
    throw error
  }
}

/** What came of saving; `changed` where the file says something else than was seen. */
export type SavedFile =
  | { readonly kind: 'saved'; readonly tag: string }
  | { readonly kind: 'changed'; readonly text: string; readonly tag: string }

/** What to save, and the tag of what was seen last. */
export type ToSave = { readonly name: string; readonly text: string; readonly seen: string }

const isUtf8 = (bytes: Uint8Array): boolean => {
  try {
    new TextDecoder('utf-8', { fatal: true }).decode(bytes)
    return true
  } catch {
    return false
  }
}

/** By its mark of order a spreadsheet knows UTF-8; a table keeps it, and gets it with another text. */
const markOf = (bytes: Uint8Array | undefined): string =>
  bytes && ((bytes[0] === 0xef && bytes[1] === 0xbb) || !isUtf8(bytes)) ? '\uFEFF' : ''

/**
 * Writes a file of the folder, and makes the folder where it is not there yet. A file that is a link
 * is written where it leads, as long as that is in the folder.
 * @param given.name One of those that the form writes.
 */
export async function saveFile(folder: string, { name, text, seen }: ToSave): Promise<SavedFile> {
  const isTable = name !== facilityFile
  const now = await (isTable ? tableAt(name, folder) : textAt(name, folder))
  if (tagOf(now) !== seen) return { kind: 'changed', text: now ?? '', tag: tagOf(now) }
  await mkdir(folder, { recursive: true })
  const file = path.join(folder, name)
  const target = await realpath(file).catch(() => file)
  if (pathBelow(await realpath(folder), await realpath(path.dirname(target))) === undefined)
    throw new RangeError(`${name} leads out of the folder`)
  await replaceFile(target, `${isTable ? markOf(await bytesAt(name, folder)) : ''}${text}`)
  return { kind: 'saved', tag: tagOf(text) }
}

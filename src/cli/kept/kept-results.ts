import { createHash } from 'node:crypto'
import {
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  utimesSync,
  writeFileSync,
} from 'node:fs'
import path from 'node:path'
import { deserialize, serialize } from 'node:v8'

/**
 * What earlier commands have worked out. A kind is a word, and the name of a folder; the parts are all
 * that a result depends on but the program itself.
 */
export type KeptResults = {
  readonly find: (kind: string, parts: readonly string[]) => { readonly value: unknown } | undefined
  readonly keep: (kind: string, parts: readonly string[], value: unknown) => void
}

/** Of each kind those stay that were asked for last, on disk and in a command that runs on. */
const [most, mostInMemory] = [24, 8]

const sha256 = (data: Uint8Array): Buffer => createHash('sha256').update(data).digest()
const digestLength = 32

/** What a file holds behind its own hash; nothing where it is damaged, cut off or not there. */
function read(file: string): { readonly value: unknown } | undefined {
  try {
    const bytes = readFileSync(file)
    const data = bytes.subarray(digestLength)
    if (!sha256(data).equals(bytes.subarray(0, digestLength))) return undefined
    const now = new Date()
    utimesSync(file, now, now)
    return { value: deserialize(data) }
  } catch {
    return undefined
  }
}

function dropOldest(folder: string): void {
  const files = readdirSync(folder).map((name) => path.join(folder, name))
  if (files.length <= most) return
  const timeOf = (file: string): number => statSync(file, { throwIfNoEntry: false })?.mtimeMs ?? 0
  const times = files.map((file) => ({ file, time: timeOf(file) })).sort((a, b) => b.time - a.time)
  for (const { file } of times.slice(most)) rmSync(file, { force: true })
}

function dropHalf(file: string): void {
  try {
    rmSync(file, { force: true })
  } catch {
    return
  }
}

/** Written whole or not at all: other commands read and write at the same moment. */
function write(file: string, value: unknown): void {
  const own = `${file}.${process.pid}`
  try {
    mkdirSync(path.dirname(file), { recursive: true })
    const data = serialize(value)
    writeFileSync(own, Buffer.concat([sha256(data), data]))
    // Some disks make whoever puts a file in the place of another wait until both are written.
    rmSync(file, { force: true })
    renameSync(own, file)
    dropOldest(path.dirname(file))
  } catch {
    // The next command works it out again.
    dropHalf(own)
  }
}

/**
 * @param folder Where results are kept, in files that can be deleted at any time.
 * @param program Stands for the program, which everything depends on.
 */
export function openResults(folder: string, program: string): KeptResults {
  const memories = new Map<string, Map<string, unknown>>()
  const memoryOf = (kind: string): Map<string, unknown> => {
    const memory = memories.get(kind) ?? new Map<string, unknown>()
    memories.set(kind, memory)
    return memory
  }
  const remember = (kind: string, name: string, value: unknown): void => {
    const memory = memoryOf(kind)
    memory.delete(name)
    memory.set(name, value)
    for (const oldest of [...memory.keys()].slice(0, -mostInMemory)) memory.delete(oldest)
  }
  const nameOf = (kind: string, parts: readonly string[]): string => {
    const hash = createHash('sha256').update(program)
    for (const part of parts) hash.update(`\0${part.length}\0`).update(part)
    return path.join(kind, hash.digest('hex'))
  }
  return {
    find: (kind, parts) => {
      const name = nameOf(kind, parts)
      const memory = memoryOf(kind)
      const found = memory.has(name) ? { value: memory.get(name) } : read(path.join(folder, name))
      if (found) remember(kind, name, found.value)
      return found
    },
    keep: (kind, parts, value) => {
      const name = nameOf(kind, parts)
      remember(kind, name, value)
      write(path.join(folder, name), value)
    },
  }
}

let results: KeptResults | undefined

/** What this process may take from earlier ones; nothing before a command allows it. */
export const keptResults = (): KeptResults | undefined => results

/** Lets this process take results from the cache folder, so that nothing but a command does. */
export function useResults(kept: KeptResults | undefined): void {
  results = kept
}

/**
 * The result that is kept under these parts, else the one that `make` makes now.
 * @param isSound Whether it may be kept.
 */
export async function keptOr<T>(
  kind: string,
  parts: readonly string[],
  make: () => T | Promise<T>,
  isSound: (made: T) => boolean = () => true,
): Promise<T> {
  const found = results?.find(kind, parts)
  if (found) return found.value as T
  const made = await make()
  if (isSound(made)) results?.keep(kind, parts, made)
  return made
}

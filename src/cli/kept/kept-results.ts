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

/** What earlier commands have worked out, by all that it depends on. */
export type KeptResults = {
  /**
   * The result that is kept under these parts, else the one that `make` makes now; what is
   * `undefined` is not kept.
   * @param kind What is kept, in a word: the name of a folder.
   * @param parts All that it depends on but the program itself.
   */
  readonly get: <T>(
    kind: string,
    parts: readonly string[],
    make: () => T | undefined,
  ) => T | undefined
}

/** Of each kind those stay that were asked for last. */
const most = 12

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

/** Written whole or not at all: other commands read and write at the same moment. */
function write(file: string, value: unknown): void {
  const own = `${file}.${process.pid}`
  try {
    mkdirSync(path.dirname(file), { recursive: true })
    const data = serialize(value)
    writeFileSync(own, Buffer.concat([sha256(data), data]))
    renameSync(own, file)
    dropOldest(path.dirname(file))
  } catch {
    // The next command works it out again.
    rmSync(own, { force: true })
  }
}

/**
 * @param folder Where results are kept, in files that can be deleted at any time.
 * @param program Stands for the program, which everything depends on.
 */
export function openResults(folder: string, program: string): KeptResults {
  const memory = new Map<string, unknown>()
  const remember = <T>(name: string, value: T): T => {
    memory.delete(name)
    memory.set(name, value)
    for (const oldest of [...memory.keys()].slice(0, -most)) memory.delete(oldest)
    return value
  }
  return {
    get: <T>(kind: string, parts: readonly string[], make: () => T | undefined) => {
      const hash = createHash('sha256').update(program)
      for (const part of parts) hash.update(`\0${part.length}\0`).update(part)
      const name = path.join(kind, hash.digest('hex'))
      if (memory.has(name)) return remember(name, memory.get(name) as T)
      const file = path.join(folder, name)
      const found = read(file)
      if (found) return remember(name, found.value as T)
      const value = make()
      if (value === undefined) return undefined
      write(file, value)
      return remember(name, value)
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

import { createHash } from 'node:crypto'
import { mkdir, readdir, readFile, rename, rm, stat, utimes, writeFile } from 'node:fs/promises'
import path from 'node:path'
import { deserialize, serialize } from 'node:v8'
import { millisecondsPerDay } from '../../model/day.ts'

export type CachePart = string | Uint8Array

/** What has been printed before, by all that it depends on. */
export type PrintCache = {
  /** The value kept under these parts, else the one that `make` makes now. */
  readonly get: <T>(parts: readonly CachePart[], make: () => Promise<T>) => Promise<T>
  /** Drops what no build has asked for in a month. */
  readonly prune: () => Promise<void>
}

const keptDays = 30

/** A hash of what is kept stands before it: what a disk has spoilt may still be read as a value. */
const hashLength = 32
const hashOf = (data: Uint8Array): Buffer => createHash('sha256').update(data).digest()

/** Prints are asked for as part of several things. */
const hashes = new WeakMap<Uint8Array, Buffer>()

function hashOfBytes(bytes: Uint8Array): Buffer {
  const known = hashes.get(bytes)
  if (known) return known
  const hash = hashOf(bytes)
  hashes.set(bytes, hash)
  return hash
}

function keyOf(parts: readonly CachePart[]): string {
  const hash = createHash('sha256')
  for (const part of parts)
    hash.update(`${part.length}\0`).update(typeof part === 'string' ? part : hashOfBytes(part))
  return hash.digest('hex')
}

async function kept(file: string): Promise<{ readonly value: unknown } | undefined> {
  try {
    const all = await readFile(file)
    const data = all.subarray(hashLength)
    if (!hashOf(data).equals(all.subarray(0, hashLength))) return undefined
    const value: unknown = deserialize(data)
    const now = new Date()
    await utimes(file, now, now)
    return { value }
  } catch {
    // Not there, or written by another version of node: it is made again.
    return undefined
  }
}

/** Keeps values that structured cloning can copy, one file each. */
export function printCache(folder: string): PrintCache {
  return {
    get: async <T>(parts: readonly CachePart[], make: () => Promise<T>): Promise<T> => {
      const key = keyOf(parts)
      const file = path.join(folder, key.slice(0, 2), key)
      const found = await kept(file)
      if (found) return found.value as T
      const value = await make()
      // Written whole or not at all: a second build may read at the same moment.
      const own = `${file}.${process.pid}.${Math.round(performance.now() * 1000)}`
      try {
        await mkdir(path.dirname(file), { recursive: true })
        const data = serialize(value)
        await writeFile(own, Buffer.concat([hashOf(data), data]))
        await rename(own, file)
      } catch {
        // Windows does not let a file go that somebody reads: then the same is there already. Where the
        // disk is full, the next build does this work again.
        await rm(own, { force: true }).catch(() => undefined)
      }
      return value
    },
    prune: async () => {
      const names = await readdir(folder, { recursive: true }).catch(() => [])
      for (const name of names) {
        const file = path.join(folder, name)
        const about = await stat(file).catch(() => undefined)
        if (about?.isFile() && Date.now() - about.mtimeMs > keptDays * millisecondsPerDay)
          await rm(file, { force: true })
      }
    },
  }
}

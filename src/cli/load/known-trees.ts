import { createHash } from 'node:crypto'
import { mkdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs'
import path from 'node:path'
import { deserialize, serialize } from 'node:v8'
import type { SourceFile } from '../../read/source-file.ts'
import { programHash } from '../kept/program-id.ts'
import type { Folders } from './load-manual.ts'

/** What files without faults said when they were read before, by all that their text is. */
type KnownTrees = {
  readonly of: (file: SourceFile) => { readonly data: unknown } | undefined
  readonly keep: (file: SourceFile, data: unknown) => void
  /** Writes down what was asked for, where it is not what was written down before. */
  readonly save: () => void
}

function openTrees(cache: string, folders: Folders): KnownTrees {
  const file = path.join(cache, 'prints', 'read', programHash(folders, 'read'))
  let before = new Map<string, unknown>()
  try {
    before = deserialize(readFileSync(file)) as Map<string, unknown>
  } catch {
    // Nothing was read before, or by another version of node.
  }
  const asked = new Map<string, unknown>()
  const keyOf = ({ text }: SourceFile): string => createHash('sha256').update(text).digest('base64')
  return {
    of: (source) => {
      const key = keyOf(source)
      if (!before.has(key)) return undefined
      const data = before.get(key)
      asked.set(key, data)
      return { data }
    },
    keep: (source, data) => {
      asked.set(keyOf(source), data)
    },
    save: () => {
      if ([...asked.keys()].every((key) => before.has(key))) return
      try {
        mkdirSync(path.dirname(file), { recursive: true })
        const own = `${file}.${process.pid}`
        writeFileSync(own, serialize(asked))
        renameSync(own, file)
      } catch {
        // The next command reads everything itself.
      }
    },
  }
}

let trees: KnownTrees | undefined

export const knownTrees = (): KnownTrees | undefined => trees

/**
 * Lets this process take what its files said before from the cache folder. A command calls it, so
 * that nothing else depends on what lies there.
 */
export function useKnownTrees(cache: string | undefined, folders: Folders): void {
  trees = cache === undefined ? undefined : openTrees(cache, folders)
}

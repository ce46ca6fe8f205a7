import { createHash } from 'node:crypto'
import { mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs'
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

/** One file with what others said. */
type Store = {
  readonly find: (key: string) => { readonly data: unknown } | undefined
  readonly keep: (key: string, data: unknown) => void
  readonly save: () => void
}

/** What lies in a file is taken when it is first of use; then what was asked for last is enough. */
function openStore(file: string): Store {
  let before: ReadonlyMap<string, unknown> | undefined
  let asked = new Map<string, unknown>()
  const earlier = (): ReadonlyMap<string, unknown> => {
    try {
      before ??= deserialize(readFileSync(file)) as Map<string, unknown>
    } catch {
      // Nothing was read before, or by another version of node.
      before = new Map()
    }
    return before
  }
  const write = (): void => {
    const own = `${file}.${process.pid}`
    try {
      mkdirSync(path.dirname(file), { recursive: true })
      writeFileSync(own, serialize(asked))
      // Some disks make whoever puts a file in the place of another wait until both are written.
      rmSync(file, { force: true })
      renameSync(own, file)
    } catch {
      // The next command reads everything itself.
    }
  }
  return {
    find: (key) => {
      if (!earlier().has(key)) return undefined
      const data = earlier().get(key)
      asked.set(key, data)
      return { data }
    },
    keep: (key, data) => {
      asked.set(key, data)
    },
    save: () => {
      if (![...asked.keys()].every((key) => earlier().has(key))) write()
      if (asked.size > 0) before = asked
      asked = new Map()
    },
  }
}

const isOfLibrary = ({ path: shown }: SourceFile): boolean =>
  /^(?:content|shared)\//.test(shown) && !shown.startsWith('content/facilities/')

/** The library, which is large and seldom changes, lies apart from what a facility says. */
function openTrees(file: string): KnownTrees {
  const [library, facility] = [openStore(`${file}-library`), openStore(`${file}-facility`)]
  const storeOf = (source: SourceFile): Store => (isOfLibrary(source) ? library : facility)
  const keyOf = ({ text }: SourceFile): string => createHash('sha256').update(text).digest('base64')
  return {
    of: (source) => storeOf(source).find(keyOf(source)),
    keep: (source, data) => storeOf(source).keep(keyOf(source), data),
    save: () => {
      library.save()
      facility.save()
    },
  }
}

let trees: KnownTrees | undefined
let opened: string | undefined

export const knownTrees = (): KnownTrees | undefined => trees

/**
 * Lets this process take what its files said before from the cache folder. A command calls it, so
 * that nothing else depends on what lies there; one that runs on keeps what it has taken.
 */
export function useKnownTrees(cache: string | undefined, folders: Folders): void {
  const file = cache && path.join(cache, 'prints', 'read', programHash(folders, 'read'))
  if (file !== opened) trees = file === undefined ? undefined : openTrees(file)
  opened = file
}

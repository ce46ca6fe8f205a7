import path from 'node:path'
import type { Problem } from '../model/problem.ts'
import { cacheFolder } from '../print/browser/cache-folder.ts'
import { thisMachine } from '../print/browser/machine.ts'
import { printCache } from '../print/press/print-cache.ts'
import type { Library } from '../validate/check-library.ts'
import { checkNotSaid } from '../validate/check-not-said.ts'
import { checkWords } from '../validate/check-words.ts'
import { hashOf } from '../write/build-record.ts'
import type { Io } from './io.ts'
import { programId } from './kept/program-id.ts'
import type { Folders, LoadedManual } from './load/load-manual.ts'
import { readTree } from './load/read-tree.ts'
import { checkSpelling } from './spelling.ts'

/**
 * What the words of the library do against the house style. It takes longer than all else that is
 * checked and rests on the library alone, so it is worked out once for each state of both.
 */
export async function styleProblems(
  library: Library,
  { contentFiles }: Pick<LoadedManual, 'contentFiles'>,
  folders: Folders,
  { env }: Pick<Io, 'env'>,
): Promise<readonly Problem[]> {
  const notSaid = await readTree(folders.content, 'not-said.yaml', 'content')
  const make = async (): Promise<readonly Problem[]> => [
    ...checkWords(library),
    ...(notSaid.value ? checkNotSaid(library, notSaid.value) : notSaid.problems),
    ...checkSpelling(library),
  ]
  const cache = await cacheFolder(thisMachine(env)).catch(() => undefined)
  if (cache === undefined) return make()
  const state = hashOf([...contentFiles, ...notSaid.files])
  return printCache(path.join(cache, 'prints')).get(['style', programId(folders), state], make)
}

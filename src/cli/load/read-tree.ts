import { readdir } from 'node:fs/promises'
import path from 'node:path'
import type { Problem, Result } from '../../model/problem.ts'
import { knownYaml, readYaml, type SourceTree } from '../../read/read-yaml.ts'
import { knownTrees } from './known-trees.ts'
import { readText } from './read-text.ts'

/** A file that was read, for the hash of what went in. */
export type ReadFile = { readonly path: string; readonly text: string }

export type Loaded<T> = Result<T> & { readonly files: readonly ReadFile[] }

/** Reads one YAML file below `root`. */
export async function readTree(
  root: string,
  name: string,
  shownRoot: string,
): Promise<Loaded<SourceTree>> {
  const shown = path.posix.join(shownRoot, name)
  const text = await readText(path.join(root, name), shown, root)
  if (!text.value) return { ...text, value: undefined, files: [] }
  const known = knownTrees()?.of(text.value)
  if (known) return { value: knownYaml(text.value, known.data), problems: [], files: [text.value] }
  const read = readYaml(text.value)
  if (read.value && read.problems.length === 0) knownTrees()?.keep(text.value, read.value.data)
  return { ...read, files: [text.value] }
}

/**
 * Reads all YAML files of a folder below `root`, in the order of their names; a folder that is not
 * there is empty.
 */
export async function readTrees(
  root: string,
  folder: string,
  shownRoot: string,
): Promise<Loaded<readonly SourceTree[]>> {
  const names = await readdir(path.join(root, folder)).catch(() => [] as string[])
  const read = await Promise.all(
    names
      .filter((n) => n.endsWith('.yaml'))
      .sort()
      .map((n) => readTree(root, path.posix.join(folder, n), shownRoot)),
  )
  const problems: Problem[] = read.flatMap((r) => [...r.problems])
  return {
    value: read.flatMap((r) => r.value ?? []),
    problems,
    files: read.flatMap((r) => r.files),
  }
}

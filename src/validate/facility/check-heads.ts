import type { Problem } from '../../model/problem.ts'
import type { Path, SourceTree } from '../../read/read-yaml.ts'
import { type HiddenHead, hiddenHeadHint, hiddenHeads } from '../../read/yaml-faults/hidden-head.ts'

/** Groups in which a value under the wrong head would be rung or driven to. */
const urgent: readonly unknown[] = ['place', 'contacts', 'emergency']

/** The head of some group, behind a #. */
const anyHead = /^#(?: {2})*[a-z][a-z0-9-]*:\s*$/m

/** Every entry of a tree of data, by its path. */
function* entriesOf(data: unknown, at: Path = []): Generator<Path> {
  if (typeof data !== 'object' || data === null) return
  for (const [key, value] of Object.entries(data)) {
    const path = [...at, Array.isArray(data) ? Number(key) : key]
    yield path
    yield* entriesOf(value, path)
  }
}

/** The entry that begins in a line. */
function entryInLine(tree: SourceTree, line: number): Path | undefined {
  for (const path of entriesOf(tree.data)) {
    const place = typeof path.at(-1) === 'number' ? tree.placeOf(path) : tree.keyPlaceOf(path)
    if (place.line === line) return path
  }
  return undefined
}

function misplaced(tree: SourceTree, line: number, heads: readonly HiddenHead[]): Problem[] {
  const path = entryInLine(tree, line)
  if (path === undefined) return []
  const group = path.slice(0, -1).filter((step) => typeof step === 'string')
  const named = heads.map(({ name }) => name).join('.')
  const isPoint = typeof path.at(-1) === 'number'
  return [
    tree.problem(
      isPoint ? tree.placeOf(path) : tree.keyPlaceOf(path),
      'facility/odd',
      `${isPoint ? 'this line' : `"${path.at(-1)}"`} stands under "${named}", whose head is still a remark, and so is taken as part of "${group.join('.')}"`,
      {
        hint: `${hiddenHeadHint(heads)}; or, where it is meant for "${group.at(-1)}", move it above line ${heads[0]?.line}`,
        severity: urgent.includes(path[0]) ? 'error' : 'warning',
        path,
      },
    ),
  ]
}

/**
 * Entries that belong to a group by the order of the file in which every entry is explained, while
 * its head is still behind a #: they have come into the group above, which may take them without a
 * word.
 * @param told Lines about which the same has been said.
 */
export function checkHeads(tree: SourceTree, told: ReadonlySet<number>): Problem[] {
  const { text } = tree.file
  if (!anyHead.test(text)) return []
  const lines = text.split(/\r?\n/)
  return lines.flatMap((shown, i) => {
    if (/^\s*(?:#.*)?$/.test(shown) || told.has(i + 1)) return []
    const heads = hiddenHeads(lines, i + 1, false)
    return heads.length === 0 ? [] : misplaced(tree, i + 1, heads)
  })
}

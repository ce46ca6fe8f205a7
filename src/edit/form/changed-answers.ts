import type { Path } from '../../read/read-yaml.ts'

type Group = Readonly<Record<string, unknown>>

const isGroup = (found: unknown): found is Group =>
  typeof found === 'object' && found !== null && !Array.isArray(found)

/** Whether a list has groups in it; a list of texts is one answer. */
const isList = (found: unknown): found is readonly unknown[] =>
  Array.isArray(found) && found.some(isGroup)

/** What stands in an entry, by the steps that lead on; nothing where it is an answer by itself. */
function inside(found: unknown): ReadonlyMap<string | number, unknown> {
  if (isList(found)) return new Map(found.map((one, i) => [i, one]))
  return new Map(isGroup(found) ? Object.entries(found) : [])
}

const isAnswer = (found: unknown): boolean =>
  found !== undefined && found !== null && !isGroup(found) && !isList(found)

/** The places of the answers that differ between what two files say, those of the newer one first. */
export function changedAnswers(before: unknown, after: unknown, at: Path = []): readonly Path[] {
  if (JSON.stringify(before) === JSON.stringify(after)) return []
  const [old, now] = [inside(before), inside(after)]
  const deeper = [...new Set([...now.keys(), ...old.keys()])].flatMap((step) =>
    changedAnswers(old.get(step), now.get(step), [...at, step]),
  )
  return deeper.length === 0 && (isAnswer(before) || isAnswer(after)) ? [at] : deeper
}

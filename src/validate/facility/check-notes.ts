import type { Problem } from '../../model/problem.ts'
import type { Sourced } from '../check-library.ts'
import { checkText, type NameTargets } from '../check-text.ts'
import { nearName } from '../schema-advice/near-name.ts'
import { note } from '../schemas/facility.ts'
import type { ParsedFacility } from './parsed-facility.ts'

const words = (text: string): readonly string[] =>
  text
    .toLowerCase()
    .split(/[^a-z]+/)
    .filter((word) => word.length > 2)

/** How many words of one text begin like one of another. */
const shared = (one: readonly string[], other: readonly string[]): number =>
  one.filter((a) => other.some((b) => a.startsWith(b) || b.startsWith(a))).length

/** The procedures that most likely were meant, else all: each with its title, which its page has. */
function procedureMeant(name: string, known: ReadonlyMap<string, string>): string {
  const asked = words(name)
  const near = nearName(name, [...known.keys()])
  const alike = [...known].filter(
    ([id, title]) => id === near || shared(asked, words(`${id} ${title}`)) > 0,
  )
  const shown = alike.length > 0 ? alike : [...known]
  const lines = shown.map(([id, title]) => `\n    ${id}: ${title}`)
  return `${alike.length > 0 ? 'did you mean one of these?' : 'known:'}${lines.join('')}`
}

/** What a facility adds to procedures: of procedures that there are, and written as these are. */
export function checkNotes({ file, tree }: ParsedFacility, targets: NameTargets): Problem[] {
  const notes = file.notes ?? []
  const unknown = notes.flatMap(({ procedure }, i) =>
    targets.procedures.has(procedure)
      ? []
      : [
          tree.problem(
            tree.placeOf(['notes', i, 'procedure']),
            'ref/missing',
            `there is no procedure "${procedure}"`,
            { hint: procedureMeant(procedure, targets.procedures) },
          ),
        ],
  )
  const texts = notes.map((value, i): Sourced<unknown> => {
    const path = ['notes', i]
    return { value, tree, path, schema: note }
  })
  return [...unknown, ...checkText(texts, targets)]
}

import type { Problem } from '../../model/problem.ts'
import type { Sourced } from '../check-library.ts'
import { checkText, type NameTargets } from '../check-text.ts'
import { note } from '../schemas/facility.ts'
import type { ParsedFacility } from './parsed-facility.ts'

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
            { hint: `known: ${[...targets.procedures].join(', ')}` },
          ),
        ],
  )
  const texts = notes.map((value, i): Sourced<unknown> => {
    const path = ['notes', i]
    return { value, tree, path, schema: note }
  })
  return [...unknown, ...checkText(texts, targets)]
}

import { didYouMeanOneOf } from '../../model/closest.ts'
import type { Problem } from '../../model/problem.ts'
import type { ParsedFacility } from './parsed-facility.ts'

/** A stockpile's gate is one that the same file names, at the outside. */
export function checkGates({ file, tree }: ParsedFacility): Problem[] {
  const marks = file.oval.marks ?? []
  const gates = marks.filter((m) => m.kind === 'gate' && m.side !== 'rail').map((m) => m.name)
  return marks.flatMap(({ gate }, i) =>
    gate === undefined || gates.includes(gate)
      ? []
      : [
          tree.problem(
            tree.placeOf(['oval', 'marks', i, 'gate']),
            'ref/missing',
            `no gate at the outside is called "${gate}"`,
            { hint: didYouMeanOneOf(gate, gates) },
          ),
        ],
  )
}

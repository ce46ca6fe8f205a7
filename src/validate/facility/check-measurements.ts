import { factMeant } from '../../model/fact-called.ts'
import { factSpec } from '../../model/fact-spec.ts'
import type { Problem } from '../../model/problem.ts'
import { readMeasuredAt } from '../schemas/quantity.ts'
import type { ParsedFacility } from './parsed-facility.ts'

/** A measurement is of something that there is, with a value that it can have. */
export const checkMeasurements = ({ file, tree }: ParsedFacility): Problem[] =>
  (file.measurements ?? []).flatMap(({ of, value }, i) => {
    if (!factSpec(of))
      return [
        tree.problem(
          tree.placeOf(['measurements', i, 'of']),
          'ref/missing',
          `there is nothing called "${of}" to measure`,
          { hint: factMeant(of) },
        ),
      ]
    const read = readMeasuredAt(tree, ['measurements', i, 'value'], of, value)
    return 'code' in read ? [read] : []
  })

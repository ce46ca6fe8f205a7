import { capabilityOf, factSpec } from '../../../model/fact-spec.ts'
import type { Problem } from '../../../model/problem.ts'
import type { Path } from '../../../read/read-yaml.ts'
import { readMeasured } from '../../read-measured.ts'
import type { ParsedFacility } from '../parsed-facility.ts'
import { statedAt, type Valued, written } from './valued.ts'

/** A measurement and what else the file says of the same thing are not further apart than this. */
const apart = 1.8

/** Where a fact is stated: for a machine's, at the first that does the work, as the manual takes it. */
function statedPath({ file }: ParsedFacility, of: string): Path {
  const work = capabilityOf(of)
  if (!work) return of.split('.')
  const index = (file.equipment ?? []).findIndex((m) => m.can.includes(work))
  return ['equipment', index, of.split('.')[2] ?? '']
}

const far = (a: number, b: Valued): boolean =>
  Math.min(a, b.si) > 0 && Math.max(a, b.si) > apart * Math.min(a, b.si)

/** What was measured outranks what is stated; where they are far apart, one of them is a slip. */
export const checkMeasured = (parsed: ParsedFacility): Problem[] =>
  (parsed.file.measurements ?? []).flatMap(({ of, value }, i) => {
    const read = factSpec(of) && readMeasured(of, value)
    const path = statedPath(parsed, of)
    const stated = statedAt(parsed, path)
    if (!read || 'params' in read || !stated || !far(read.si, stated)) return []
    return [
      parsed.tree.problem(
        parsed.tree.placeOf(path),
        'facility/odd',
        `${written(parsed, path)} stands here, and ${written(parsed, ['measurements', i, 'value'])} was measured`,
        {
          hint: 'the manual takes what was measured; is a unit or a decimal point wrong in one of them?',
          severity: 'warning',
        },
      ),
    ]
  })

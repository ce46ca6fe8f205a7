import { isZone } from '../../model/day.ts'
import type { Problem } from '../../model/problem.ts'
import type { ParsedFacility } from './parsed-facility.ts'

/** A time zone is one that clocks know. */
export function checkZone({ file, tree }: ParsedFacility): Problem[] {
  const zone = file.place['time-zone']
  if (zone === undefined || isZone(zone)) return []
  return [
    tree.problem(
      tree.placeOf(['place', 'time-zone']),
      'schema/choice',
      `there is no time zone "${zone}"`,
      { hint: 'expected a zone of the IANA list, such as America/New_York' },
    ),
  ]
}

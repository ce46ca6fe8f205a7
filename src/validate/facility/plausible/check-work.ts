import type { Problem } from '../../../model/problem.ts'
import type { ParsedFacility } from '../parsed-facility.ts'
import { factAt, statedAt, written } from './valued.ts'

/** Minutes in which a water truck runs empty: faster it floods, slower nobody waits. */
const [quickest, slowest] = [3, 40]

/** Tank and flow of a water truck fit each other. */
const emptied = (parsed: ParsedFacility): Problem[] =>
  (parsed.file.equipment ?? []).flatMap((_, i) => {
    const at = (key: string) => ['equipment', i, key]
    const [tank, flow] = [statedAt(parsed, at('tank')), statedAt(parsed, at('flow'))]
    if (!tank || !flow || flow.si === 0) return []
    const minutes = tank.si / flow.si / 60
    if (minutes >= quickest && minutes <= slowest) return []
    return [
      parsed.tree.problem(
        parsed.tree.placeOf(at('flow')),
        'facility/odd',
        `${written(parsed, at('tank'))} at ${written(parsed, at('flow'))} are out in ${minutes.toFixed(1)} min; ${quickest} to ${slowest} min are common`,
        { hint: 'are both units right?', severity: 'warning' },
      ),
    ]
  })

/** Neighbouring passes lie over each other by less than half of what is worked. */
const overlaps = (parsed: ParsedFacility): Problem[] =>
  (parsed.file.equipment ?? []).flatMap((_, i) => {
    const at = (key: string) => ['equipment', i, key]
    const [width, overlap] = [
      statedAt(parsed, at('width')) ?? statedAt(parsed, at('spray-width')),
      statedAt(parsed, at('overlap')),
    ]
    if (!width || !overlap || overlap.si <= width.si / 2) return []
    return [
      parsed.tree.problem(
        parsed.tree.placeOf(at('overlap')),
        'facility/odd',
        `an overlap of ${written(parsed, at('overlap'))} is more than half of what the machine works at once`,
        { hint: 'every place would be worked twice; are the units right?' },
      ),
    ]
  })

/** Teeth reach no deeper than there is cushion. */
function harrowed(parsed: ParsedFacility): Problem[] {
  const path = ['practice', 'harrow', 'depth']
  const [depth, cushion] = [statedAt(parsed, path), factAt(parsed, 'cushion.depth.target')]
  if (!depth || !cushion || depth.si <= cushion.si) return []
  return [
    parsed.tree.problem(
      parsed.tree.placeOf(path),
      'facility/odd',
      `teeth ${written(parsed, path)} deep go into the base, below ${written(parsed, ['cushion', 'depth', 'target']) || `${Math.round(cushion.si * 1000)} mm`} of cushion`,
      { hint: 'set the teeth shallower than the cushion is deep', severity: 'warning' },
    ),
  ]
}

/** A race day has no fewer hands than other days. */
function hands(parsed: ParsedFacility): Problem[] {
  const at = (key: string) => ['crew', key]
  const [people, raceDay] = [statedAt(parsed, at('people')), statedAt(parsed, at('race-day'))]
  if (!people || !raceDay || raceDay.si >= people.si) return []
  return [
    parsed.tree.problem(
      parsed.tree.placeOf(at('race-day')),
      'facility/odd',
      `${written(parsed, at('race-day'))} people on a race day are fewer than ${written(parsed, at('people'))} on a usual day`,
      { hint: 'have the two changed places?', severity: 'warning' },
    ),
  ]
}

/** Machines, hands and what they do fit each other and the cushion. */
export const checkWork = (parsed: ParsedFacility): Problem[] => [
  ...emptied(parsed),
  ...overlaps(parsed),
  ...harrowed(parsed),
  ...hands(parsed),
]

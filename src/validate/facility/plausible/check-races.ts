import type { Problem } from '../../../model/problem.ts'
import type { ParsedFacility } from '../parsed-facility.ts'
import { factAt, statedAt, written } from './valued.ts'

/** A break comes before the last race. */
const breaks = (parsed: ParsedFacility): Problem[] =>
  (parsed.file['race-days'] ?? []).flatMap(({ races }, i) => {
    const path = ['race-days', i, 'break-every']
    const every = statedAt(parsed, path)
    if (!every || every.si < races) return []
    return [
      parsed.tree.problem(
        parsed.tree.placeOf(path),
        'facility/odd',
        `a break after every ${written(parsed, path)} races never comes on a day of ${races}`,
        { hint: 'leave break-every out where there is none', severity: 'warning' },
      ),
    ]
  })

/** An interval leaves time beside the horses'. */
function intervals(parsed: ParsedFacility): Problem[] {
  const horses = (
    ['practice.clear-track', 'practice.open-before', 'practice.kept-in-hand'] as const
  )
    .map((fact) => factAt(parsed, fact)?.si ?? 0)
    .reduce((sum, time) => sum + time, 0)
  return (parsed.file['race-days'] ?? []).flatMap((_, i) => {
    const path = ['race-days', i, 'interval']
    const interval = statedAt(parsed, path)
    if (!interval || interval.si > horses) return []
    return [
      parsed.tree.problem(
        parsed.tree.placeOf(path),
        'facility/odd',
        `${written(parsed, path)} from race to race leaves nothing: horses and counting take ${Math.round(horses / 60)} min`,
        {
          hint: 'is it the time from post to post? the parts stand under practice: clear-track, open-before, kept-in-hand',
          severity: 'warning',
        },
      ),
    ]
  })
}

/** The program of a race day leaves time for work. */
export const checkRaces = (parsed: ParsedFacility): Problem[] => [
  ...intervals(parsed),
  ...breaks(parsed),
]

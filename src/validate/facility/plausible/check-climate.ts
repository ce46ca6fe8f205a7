import { monthOf } from '../../../model/day.ts'
import { daylightHours } from '../../../model/day-length.ts'
import type { Problem } from '../../../model/problem.ts'
import { median } from '../../imports/median.ts'
import type { ParsedFacility } from '../parsed-facility.ts'
import { statedAt, written } from './valued.ts'

/** The longest day of a month at a latitude (degrees), s; its middle is off by minutes at most. */
const longestDay = (latitude: number, month: number): number =>
  3600 *
  Math.max(
    ...[1, 15, 30].map((day) =>
      daylightHours((latitude * Math.PI) / 180, 30.4 * (month - 1) + day),
    ),
  )

/** What a clock shows beyond the geometric day, s: the sun is seen when it is below the horizon. */
const refraction = 900

/** How many times the middle month a month may have of each, before a slip is likelier. */
const swings = { rain: 8, wind: 1.7 } as const

/** No month stands out from the others as a slip of the decimal point does. */
const standingOut = (parsed: ParsedFacility): Problem[] =>
  (['rain', 'wind'] as const).flatMap((key) => {
    const months = (parsed.file.climate ?? []).flatMap(
      (_, i) => statedAt(parsed, ['climate', i, key]) ?? [],
    )
    const middle = median(months.map((m) => m.si))
    return months.length < 3
      ? []
      : months.flatMap(({ si, path }) =>
          path === undefined || (si <= middle * swings[key] && si >= middle / swings[key])
            ? []
            : [
                parsed.tree.problem(
                  parsed.tree.placeOf(path),
                  'facility/odd',
                  `${key} ${written(parsed, path)} stands out: ${(si / middle).toFixed(1)} times the middle month`,
                  {
                    hint: 'are unit and decimal point right? where it is so, leave it',
                    severity: 'warning',
                  },
                ),
              ],
        )
  })

/** Months of the climate are such as can be, and race days have theirs. */
function months(parsed: ParsedFacility): Problem[] {
  const { file, tree } = parsed
  const given = file.climate ?? []
  const { latitude } = file.place
  const odd = given.flatMap(({ month }, i): Problem[] => {
    const at = (key: string) => statedAt(parsed, ['climate', i, key])
    const [high, low, sun] = [at('tmax'), at('tmin'), at('sun')]
    const problems: Problem[] = []
    if (high && low && high.si < low.si)
      problems.push(
        tree.problem(
          tree.placeOf(['climate', i, 'tmax']),
          'facility/odd',
          `the mean high of ${written(parsed, ['climate', i, 'tmax'])} is below the mean low of ${written(parsed, ['climate', i, 'tmin'])}`,
          { hint: 'have the two changed places?' },
        ),
      )
    if (sun && latitude !== undefined && sun.si > longestDay(latitude, month) + refraction)
      problems.push(
        tree.problem(
          tree.placeOf(['climate', i, 'sun']),
          'facility/odd',
          `${written(parsed, ['climate', i, 'sun'])} of sunshine is more than a day of that month is long, ${(longestDay(latitude, month) / 3600).toFixed(1)} h`,
          { hint: 'sunshine is the mean of a day, not of the month' },
        ),
      )
    return problems
  })
  const known = new Set(given.map((m) => m.month))
  const lacking = (file['race-days'] ?? []).flatMap(({ date }, i) =>
    given.length === 0 || known.has(monthOf(date))
      ? []
      : [
          tree.problem(
            tree.placeOf(['race-days', i, 'date']),
            'facility/odd',
            `the climate has no month ${monthOf(date)}, in which races are on ${date}`,
            {
              hint: 'add that month under climate; water is reckoned from it',
              severity: 'warning',
            },
          ),
        ],
  )
  return [...odd, ...lacking]
}

/** The climate is one that can be, and no month of it a slip. */
export const checkClimate = (parsed: ParsedFacility): Problem[] => [
  ...months(parsed),
  ...standingOut(parsed),
]

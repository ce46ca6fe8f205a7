import { isZone, startOf, zoneOffset } from '../../../model/day.ts'
import type { Problem } from '../../../model/problem.ts'
import type { ParsedFacility } from '../parsed-facility.ts'
import { written } from './valued.ts'

/** How far a clock may stand from the sun, h: China's west is three hours off, with summer time four. */
const furthest = 4

/** Nobody races before or begins after, hours of the day. */
const [earliest, latest] = [7, 21]

/** Races begin in daylight or in the evening: 1:00 is an hour after midnight. */
const firstPosts = (parsed: ParsedFacility): Problem[] =>
  (parsed.file['race-days'] ?? []).flatMap((day, i) => {
    const hour = day['first-post'] / 3600
    if (hour >= earliest && hour <= latest) return []
    const path = ['race-days', i, 'first-post']
    return [
      parsed.tree.problem(
        parsed.tree.placeOf(path),
        'facility/odd',
        `the first race of ${day.date} would be at ${written(parsed, path)}`,
        { hint: '1 in the afternoon is 1:00 PM or 13:00', severity: 'warning' },
      ),
    ]
  })

/** The time zone fits the longitude; without one nothing is printed by the clock. */
function timeZone({ file, tree }: ParsedFacility): Problem[] {
  const { 'time-zone': zone, latitude, longitude } = file.place
  const first = (file['race-days'] ?? []).map((d) => d.date).sort()[0]
  if (first === undefined) return []
  if (latitude === undefined || longitude === undefined)
    return [
      tree.problem(
        tree.keyPlaceOf(['place']),
        'facility/odd',
        'without latitude and longitude neither first nor last light is known, and no work after dark is found',
        { hint: 'read both from a phone at the track', severity: 'warning' },
      ),
    ]
  if (zone === undefined)
    return [
      tree.problem(
        tree.keyPlaceOf(['place']),
        'facility/odd',
        'without a time zone nothing is worked out by the clock: first light, start of work, sealing',
        { hint: 'add time-zone, such as America/Chicago', severity: 'warning' },
      ),
    ]
  const offset =
    Number.isNaN(startOf(first).getTime()) || !isZone(zone) ? undefined : zoneOffset(first, zone)
  if (offset === undefined) return []
  const apart = offset / 3600 - longitude / 15
  // Around the line of the date a day is 24 hours apart.
  const off = Math.min(Math.abs(apart), Math.abs(24 - Math.abs(apart)))
  if (off <= furthest) return []
  return [
    tree.problem(
      tree.placeOf(['place', 'time-zone']),
      'facility/odd',
      `clocks of ${zone} are ${off.toFixed(1)} h off the sun at longitude ${longitude}`,
      { hint: 'is the longitude east positive, west negative? is the zone that of the place?' },
    ),
  ]
}

/** Clocks are those of the place, and races begin at a time at which people race. */
export const checkClocks = (parsed: ParsedFacility): Problem[] => [
  ...timeZone(parsed),
  ...firstPosts(parsed),
]

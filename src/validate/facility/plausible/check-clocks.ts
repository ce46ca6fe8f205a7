import { startOf, zoneOffset } from '../../../model/day.ts'
import type { Problem } from '../../../model/problem.ts'
import type { ParsedFacility } from '../parsed-facility.ts'

/** How far a clock may stand from the sun, h: China's west is three hours off, with summer time four. */
const furthest = 4

/** The time zone fits the longitude; without one nothing is printed by the clock. */
export function checkClocks({ file, tree }: ParsedFacility): Problem[] {
  const { 'time-zone': zone, longitude } = file.place
  const first = (file['race-days'] ?? []).map((d) => d.date).sort()[0]
  if (first === undefined || longitude === undefined) return []
  if (zone === undefined)
    return [
      tree.problem(
        tree.keyPlaceOf(['place']),
        'facility/odd',
        'without a time zone nothing is worked out by the clock: first light, start of work, sealing',
        { hint: 'add time-zone, such as America/Chicago', severity: 'warning' },
      ),
    ]
  const offset = Number.isNaN(startOf(first).getTime()) ? undefined : zoneOffset(first, zone)
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

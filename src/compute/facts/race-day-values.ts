import { dayNumber, zoneOffset } from '../../model/day.ts'
import type { FactPath } from '../../model/fact-spec.ts'
import type { Quantity } from '../../model/quantity/read-quantity.ts'
import type { FacilityFile } from '../../validate/schemas/facility.ts'

type RaceDayEntry = NonNullable<FacilityFile['race-days']>[number]

/**
 * Facts that belong to one race day, in SI, by their path; an interval that the program does not
 * give stays as it is elsewhere, and breaks that it does not give are none.
 */
export function raceDayValues(
  day: RaceDayEntry,
  timeZone: string | undefined,
): ReadonlyMap<FactPath, number> {
  const zone = timeZone === undefined ? undefined : zoneOffset(day.date, timeZone)
  const siOf = (value: unknown): number | undefined => (value as Quantity | undefined)?.si
  const interval = siOf(day.interval)
  const pause = siOf(day.break)
  return new Map<FactPath, number>([
    ['fair.day', dayNumber(day.date)],
    ['race-days.races', day.races],
    ['race-days.first-post', day['first-post']],
    ['race-days.break-every', siOf(day['break-every']) ?? 0],
    ...(zone === undefined ? [] : [['fair.zone', zone] as const]),
    ...(interval === undefined ? [] : [['race-days.interval', interval] as const]),
    ...(pause === undefined ? [] : [['race-days.break', pause] as const]),
  ])
}

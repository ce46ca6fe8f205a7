import type { RaceDay } from '../../model/manual/facility.ts'
import { formatExact } from '../../model/quantity/format-exact.ts'
import type { Quantity } from '../../model/quantity/read-quantity.ts'
import type { ComposeContext } from '../context.ts'

/** The race days of the facility file, in its order. */
export const composeRaceDays = ({ facility, locale }: ComposeContext): readonly RaceDay[] =>
  (facility.file['race-days'] ?? []).map((d) => ({
    date: d.date,
    firstPost: formatExact(d['first-post'], 'clock', locale),
    races: d.races,
    interval:
      d.interval === undefined ? '' : formatExact((d.interval as Quantity).si, 'minutes', locale),
  }))

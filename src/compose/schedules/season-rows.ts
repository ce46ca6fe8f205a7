import type { LoggedDay } from '../../model/daily-log.ts'
import { addDays } from '../../model/day.ts'
import type { TableRows } from '../../model/manual/schedule.ts'
import { median } from '../../validate/imports/median.ts'
import { type ComposeContext, printed } from '../context.ts'
import { placeInWeek, shortDate } from '../dates.ts'

/** What one load puts on the track, beside the records. */
export const seasonInputs = { load: 'fleet.mean' } as const

const logged = ({ facility }: ComposeContext): readonly LoggedDay[] =>
  facility.imported['daily-log'].flat()

const sampled = ({ facility }: ComposeContext) => facility.imported.moisture.flatMap((m) => m.days)

const sum = (values: readonly number[]): number | undefined =>
  values.length === 0 ? undefined : values.reduce((a, b) => a + b, 0)

/** How often each use stands in the log: `training 4, racing 2`. */
function usesOf(days: readonly LoggedDay[]): string {
  const uses = days.flatMap(({ use }) => (use === undefined ? [] : [use]))
  return [...new Set(uses)]
    .map((use) => `${use} ${uses.filter((u) => u === use).length}`)
    .join(', ')
}

/** One row for each week of the log and of samples: what the track was used for, rain, water. */
export function seasonWeekRows(context: ComposeContext): TableRows {
  const { engine, facility, locale } = context
  const weekOf = (date: string): string => addDays(date, -placeInWeek(date, locale.system))
  const [days, samples] = [logged(context), sampled(context)]
  const load = engine.si(seasonInputs.load)
  const weeks = new Set([...days, ...samples].map(({ date }) => weekOf(date)))
  return [...weeks].sort().map((week) => {
    const here = ({ date }: { readonly date: string }): boolean => weekOf(date) === week
    const rain = sum(
      facility.imported.weather
        .flat()
        .filter(here)
        .map((d) => d.rain),
    )
    const loads = sum(days.filter(here).flatMap((d) => d.loads ?? []))
    const moisture = samples.filter(here).flatMap((d) => d.values)
    return [
      shortDate(week, context),
      usesOf(days.filter(here)),
      rain === undefined ? '' : printed(rain, 'waterDepth', context),
      loads === undefined ? '' : printed(loads, 'whole', context),
      loads === undefined || load === undefined
        ? ''
        : printed(loads * load, 'waterVolume', context),
      moisture.length === 0 ? '' : printed(median(moisture), 'fineShare', context),
    ]
  })
}

/** Days of the log that are shown one by one. */
const shown = 14

/** One row for each of the last days of the log: what was done and seen, in its own words. */
export const seasonDayRows = (context: ComposeContext): TableRows =>
  logged(context)
    .slice(-shown)
    .map(({ date, use, stored, work, seen, tomorrow }) => [
      shortDate(date, context),
      use ?? '',
      stored === undefined ? '' : printed(stored, 'waterVolume', context),
      work ?? '',
      seen ?? '',
      tomorrow ?? '',
    ])

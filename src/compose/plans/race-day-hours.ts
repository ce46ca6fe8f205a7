import type { Engine } from '../../compute/engine.ts'
import { raceDayHours, type RaceDayWaterInput } from '../../compute/racing/race-day-hours.ts'
import { type PlanContext, printed, valueOf } from './plan-context.ts'

const names = {
  rate: 'air.rate',
  area: 'area.total',
  load: 'cycle.water',
  usable: 'gear.spray.usable',
  cycle: 'cycle.time',
  spread: 'cycle.spread',
  trucks: 'gear.spray.count',
  rise: 'daylight.rise',
  set: 'daylight.set',
  start: 'clock.start',
  done: 'clock.done',
  horses: 'clock.horses',
  first: 'race-days.first-post',
  last: 'clock.last',
  interval: 'race-days.interval',
  clear: 'practice.clear-track',
} as const

/** Rows of a race day's water by the hour: the same hours that the figure adds up. */
export function raceDayHourRows(
  engine: Engine,
  context: PlanContext,
): readonly (readonly string[])[] {
  const found = Object.entries(names).map(([key, name]) => [key, valueOf(engine, name)] as const)
  // A day that ends after midnight is shown as far as the last race.
  const known = found.map(
    ([key, si]) =>
      [key, si ?? (key === 'done' ? valueOf(engine, 'clock.after') : undefined)] as const,
  )
  if (known.some(([, si]) => si === undefined)) return []
  const full = valueOf(engine, 'water.storage')
  const input = {
    ...Object.fromEntries(known),
    ...(full === undefined
      ? {}
      : { store: { full, recharge: valueOf(engine, 'water.recharge') ?? 0 } }),
  } as RaceDayWaterInput
  return raceDayHours(input).map((h) => [
    printed(h.from, 'clock', context),
    printed(h.lost, 'thinDepth', context),
    printed(h.needed, 'tenths', context),
    printed(h.possible, 'tenths', context),
    printed(h.behind, 'waterDepth', context),
    h.left === undefined ? '–' : printed(h.left, 'waterVolume', context),
  ])
}

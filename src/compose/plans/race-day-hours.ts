import type { Engine } from '../../compute/engine/engine.ts'
import { type RaceDayWaterInput, raceDayHours } from '../../compute/racing/race-day-hours.ts'
import { numberOf, type PlanContext, printed } from './plan-context.ts'

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
  const found = Object.entries(names).map(([key, name]) => [key, numberOf(engine, name)] as const)
  // A day that ends after midnight is shown as far as the last race.
  const known = found.map(
    ([key, si]) =>
      [key, si ?? (key === 'done' ? numberOf(engine, 'clock.after') : undefined)] as const,
  )
  if (known.some(([, si]) => si === undefined)) return []
  const full = numberOf(engine, 'water.storage')
  const input = {
    ...Object.fromEntries(known),
    ...(full === undefined
      ? {}
      : { store: { full, recharge: numberOf(engine, 'water.recharge') ?? 0 } }),
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

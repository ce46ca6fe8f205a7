import { raceDayHours } from '../../compute/racing/race-day-hours.ts'
import type { TableRows } from '../../model/manual/schedule.ts'
import { type ComposeContext, printed } from '../context.ts'

/** Where the rows take their numbers from. */
export const raceDayHourInputs = {
  rate: 'air.rate',
  area: 'round.area',
  load: 'fleet.mean',
  usable: 'gear.spray.usable',
  cycle: 'fleet.turn',
  spread: 'cycle.spread',
  trucks: 'fleet.all',
  rise: 'daylight.rise',
  set: 'daylight.set',
  start: 'clock.start',
  begin: 'clock.water',
  look: 'clock.look',
  done: 'clock.done',
  harrowed: 'clock.truck',
  first: 'race-days.first-post',
  interval: 'race-days.interval',
  breakEvery: 'race-days.break-every',
  breaks: 'clock.breaks',
  pause: 'race-days.break',
  breakLoads: 'supply.break-loads',
  clear: 'practice.clear-track',
  parade: 'practice.open-before',
  reserve: 'practice.kept-in-hand',
} as const

/** Rows of a race day's water by the hour: the same hours that the figure adds up. */
export function raceDayHourRows(context: ComposeContext): TableRows {
  const { engine } = context
  const known = engine.siOfAll(raceDayHourInputs)
  if (!known) return []
  const held = engine.siOfAll({ full: 'water.storage', morning: 'store.morning' })
  const store =
    held === undefined ? {} : { store: { ...held, recharge: engine.si('water.recharge') ?? 0 } }
  const before = known.parade + known.reserve
  return raceDayHours({ ...known, before, ...store }).map((h) => [
    printed(h.from, 'clock', context),
    printed(h.lost, 'thinDepth', context),
    printed(h.needed, 'tenths', context),
    printed(h.possible, 'tenths', context),
    printed(h.behind, 'waterDepth', context),
    h.left === undefined ? '–' : printed(h.left, 'waterVolume', context),
  ])
}

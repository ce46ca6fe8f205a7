import { secondsPerDay } from '../../model/day.ts'
import { wetSurface } from '../weather/wet-surface.ts'

/** What a race day's water is reckoned from; SI, clock times in seconds after midnight. */
export type RaceDayWaterInput = {
  /** Reference evapotranspiration, m/s as a mean over the whole day. */
  readonly rate: number
  readonly area: number
  /** m³ on the track from one load, and the share of the tank that this is. */
  readonly load: number
  readonly usable: number
  /** Seconds from load to load, and of it spraying. */
  readonly cycle: number
  readonly spread: number
  readonly trucks: number
  readonly rise: number
  readonly set: number
  readonly start: number
  readonly done: number
  readonly horses: number
  readonly first: number
  readonly last: number
  readonly interval: number
  /** From the finish until the last horse is off, and before the post the field's, s. */
  readonly clear: number
  readonly before: number
  /**
   * Water in store in the morning, m³, and its refill, m³/s; without a store the supply is taken as
   * never failing.
   */
  readonly store?: { readonly full: number; readonly recharge: number }
}

/** One hour of a race day. */
export type RaceDayHour = {
  readonly from: number
  /** Drawn by the air in this hour, m of water. */
  readonly lost: number
  /** Loads that would put it back, not rounded. */
  readonly needed: number
  /**
   * Loads that the trucks can bring and spray in the time that the track is theirs, not rounded.
   */
  readonly possible: number
  /** m³ put down. */
  readonly given: number
  /** m of water by which the surface is behind at the end of the hour. */
  readonly behind: number
  /** m³ in store at the end of the hour. */
  readonly left: number | undefined
}

/**
 * Share of a day's evaporation that falls between two times, which follows the sun as a half sine
 * from sunrise to sunset.
 */
export function shareOfDay(from: number, to: number, rise: number, set: number): number {
  const at = (t: number): number =>
    (1 - Math.cos((Math.PI * (Math.min(set, Math.max(rise, t)) - rise)) / (set - rise))) / 2
  return at(to) - at(from)
}

const overlap = (a: number, b: number, c: number, d: number): number =>
  Math.max(0, Math.min(b, d) - Math.max(a, c))

/**
 * Seconds of a stretch of time in which no horse is on the track: before they come on, between
 * races, and after the last.
 */
export function trackTime(
  from: number,
  to: number,
  x: Pick<
    RaceDayWaterInput,
    'start' | 'done' | 'horses' | 'first' | 'last' | 'interval' | 'clear' | 'before'
  >,
): number {
  let free = overlap(from, to, x.start, x.horses) + overlap(from, to, x.last + x.clear, x.done)
  for (let post = x.first; post < x.last - 1; post += x.interval)
    free += overlap(from, to, post + x.clear, post + x.interval - x.before)
  return free
}

/**
 * A race day's water hour by hour, from the hour in which the crew begins to the one in which it is
 * done.
 */
export function raceDayHours(x: RaceDayWaterInput): readonly RaceDayHour[] {
  const hours: RaceDayHour[] = []
  let behind = 0
  let left = x.store?.full
  for (let from = Math.floor(x.start / 3600) * 3600; from < x.done; from += 3600) {
    const to = from + 3600
    const lost =
      wetSurface *
      x.rate *
      secondsPerDay *
      shareOfDay(Math.max(from, x.start), Math.min(to, x.done), x.rise, x.set)
    const possible = Math.min(
      (x.trucks * trackTime(from, to, x)) / x.spread,
      (x.trucks * overlap(from, to, x.start, x.done)) / x.cycle,
    )
    const recharge = (x.store?.recharge ?? 0) * 3600
    const reach = left === undefined ? Infinity : (left + recharge) * x.usable
    const given = Math.min((behind + lost) * x.area, possible * x.load, reach)
    behind = Math.max(0, behind + lost - given / x.area)
    if (left !== undefined) left = Math.min(x.store?.full ?? 0, left + recharge - given / x.usable)
    hours.push({ from, lost, needed: (lost * x.area) / x.load, possible, given, behind, left })
  }
  return hours
}

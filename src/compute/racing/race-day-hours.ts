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
  /** The harrow has come off, and the first round begins. */
  readonly begin: number
  readonly look: number
  /** After the last race blade and harrow have come off. */
  readonly harrowed: number
  readonly done: number
  readonly first: number
  readonly interval: number
  /** A break stands in place of an interval after every so many races. */
  readonly breakEvery: number
  readonly breaks: number
  readonly pause: number
  /** Loads that fit into a break behind the harrow. */
  readonly breakLoads: number
  /** From the finish until the last horse is off, and before the post not the crew's, s. */
  readonly clear: number
  readonly before: number
  /**
   * What the store holds when full and what is in it in the morning, m³, and its refill, m³/s; without
   * a store the supply is taken as never failing.
   */
  readonly store?: { readonly full: number; readonly morning: number; readonly recharge: number }
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
 * Seconds of a stretch of time in which the whole track is the water truck's: between harrow and last
 * look, and after the last race when blade and harrow are off.
 */
export const trackTime = (
  from: number,
  to: number,
  x: Pick<RaceDayWaterInput, 'begin' | 'look' | 'harrowed' | 'done'>,
): number => overlap(from, to, x.begin, x.look) + overlap(from, to, x.harrowed, x.done)

/** Loads that are put down in the breaks of a stretch of time, each break's in even shares. */
export function loadsInBreaks(
  from: number,
  to: number,
  x: Pick<
    RaceDayWaterInput,
    'first' | 'interval' | 'breakEvery' | 'breaks' | 'pause' | 'breakLoads' | 'clear' | 'before'
  >,
): number {
  const races = (x.breakEvery - 1) * x.interval
  const window = x.pause - x.clear - x.before
  let loads = 0
  for (let k = 0; k < x.breaks && window > 0; k++) {
    const begins = x.first + k * (races + x.pause) + races + x.clear
    loads += (x.breakLoads * overlap(from, to, begins, begins + window)) / window
  }
  return loads
}

/**
 * A race day's water hour by hour, from the hour in which the crew begins to the one in which it is
 * done.
 */
export function raceDayHours(x: RaceDayWaterInput): readonly RaceDayHour[] {
  const hours: RaceDayHour[] = []
  let behind = 0
  let left = x.store?.morning
  for (let from = Math.floor(x.start / 3600) * 3600; from < x.done; from += 3600) {
    const to = from + 3600
    const lost =
      wetSurface *
      x.rate *
      secondsPerDay *
      shareOfDay(Math.max(from, x.start), Math.min(to, x.done), x.rise, x.set)
    const mine = trackTime(from, to, x)
    const possible = (x.trucks * mine) / Math.max(x.spread, x.cycle) + loadsInBreaks(from, to, x)
    const recharge = (x.store?.recharge ?? 0) * 3600
    const reach = left === undefined ? Infinity : (left + recharge) * x.usable
    const given = Math.min((behind + lost) * x.area, possible * x.load, reach)
    behind = Math.max(0, behind + lost - given / x.area)
    if (left !== undefined) left = Math.min(x.store?.full ?? 0, left + recharge - given / x.usable)
    hours.push({ from, lost, needed: (lost * x.area) / x.load, possible, given, behind, left })
  }
  return hours
}

import { secondsPerDay } from '../../model/day.ts'
import { crewDay } from '../people/crew-day.ts'
import { lesson } from '../people/lesson.ts'
import { betweenRaces } from '../racing/between-races.ts'
import { intervalClock } from '../racing/interval-clock.ts'
import { raceDayClock } from '../racing/race-day-clock.ts'
import { raceDayWater, raceDayWaterFromStore } from '../racing/race-day-water.ts'
import type { ReasonId } from './reasons.ts'
import { type Binding, fact, figure, figureOr, fixed, type Use, use } from './use.ts'

const none = (why: ReasonId): Binding => fixed(0, why)
/** The interval, and what of it belongs to horses. */
const gap = {
  interval: fact('race-days.interval'),
  clear: fact('practice.clear-track'),
  parade: fact('practice.open-before'),
  reserve: fact('practice.kept-in-hand'),
}
const { interval } = gap
const pause = fact('race-days.break')

/** What fits between races and into a break with the harrow at hand, and by which minute. */
function between(known: ReadonlySet<string>): Use[] {
  if (!known.has('gear.harrow.width')) return []
  const noTruck = none('no-water-truck')
  const clock = {
    ...gap,
    lap: figure('between.lap'),
    whole: figure('harrow.laps'),
    rail: figure('rail.length'),
    ...(known.has('gear.spray.tank')
      ? {
          speed: figure('fleet.pace'),
          trucks: figure('fleet.all'),
          reach: figure('fleet.range'),
          bar: fact('gear.spray.spray-width'),
        }
      : { speed: noTruck, trucks: noTruck, reach: noTruck, bar: noTruck }),
  }
  return [
    use('between', betweenRaces, {
      ...gap,
      whole: figure('harrow.time'),
      all: figure('harrow.laps'),
      gain: figure('harrow.effective'),
      harrows: fact('gear.harrow.count'),
    }),
    use('gap', intervalClock, clock),
    use('break', intervalClock, { ...clock, interval: pause }),
  ]
}

type Day = {
  readonly harrow: Binding
  readonly pullBack: Binding
  readonly round: Binding
}

/**
 * The harrow is the drag harrow, or the conditioner where there is none. The rail is pulled back with
 * the blade that is here every evening, or with the harrow. What nobody here can do takes no time.
 */
function dayOf(known: ReadonlySet<string>): Day {
  const spray = known.has('gear.spray.tank')
  return {
    harrow: known.has('gear.harrow.width')
      ? figure('harrow.time')
      : known.has('gear.condition.width')
        ? figure('condition.time')
        : none('nothing-harrows'),
    pullBack: known.has('gear.draw.width')
      ? figure('grade-band.time')
      : known.has('gear.harrow.width')
        ? figure('draw-in.time')
        : none('no-grader'),
    round: spray ? figure('round.time') : none('no-water-truck'),
  }
}

function water(known: ReadonlySet<string>): Use[] {
  const needed = [
    'gear.spray.tank',
    'climate.tmax',
    'climate.tmin',
    'place.latitude',
    'place.longitude',
    'fair.day',
    'fair.zone',
  ]
  if (!needed.every((path) => known.has(path))) return []
  const bindings = {
    rate: figure('air.rate'),
    area: figure('round.area'),
    load: figure('fleet.mean'),
    usable: fact('gear.spray.usable'),
    cycle: figure('fleet.turn'),
    spread: figure('cycle.spread'),
    trucks: figure('fleet.all'),
    rise: figure('daylight.rise'),
    set: figure('daylight.set'),
    start: figure('clock.start'),
    begin: figure('clock.water'),
    look: figure('clock.look'),
    harrowed: figure('clock.truck'),
    done: figure('clock.done'),
    first: fact('race-days.first-post'),
    breakEvery: fact('race-days.break-every'),
    breaks: figure('clock.breaks'),
    pause,
    breakLoads: figure('supply.break-loads'),
    ...gap,
  }
  const recharge = known.has('water.recharge') ? fact('water.recharge') : none('no-refill')
  return [
    known.has('water.storage')
      ? use('day-water', raceDayWaterFromStore, {
          ...bindings,
          full: fact('water.storage'),
          morning: fact('store.morning'),
          recharge,
        })
      : use('day-water', raceDayWater, bindings),
  ]
}

/** The modules of the training, as the plan lists them. */
const trainingModules = 8

const training = use('lesson', lesson, {
  volunteers: fact('crew.race-day'),
  group: fact('practice.training-group'),
  talk: fact('practice.training-talk'),
  practice: fact('practice.training-practice'),
  modules: fixed(trainingModules, 'plan-modules'),
})

/** Until when there is light to work by: all night under lights, else until the last light. */
function light(known: ReadonlySet<string>): Binding {
  if (known.has('lights')) return fixed(secondsPerDay, 'lit-track')
  const sun = ['place.latitude', 'place.longitude', 'fair.zone', 'fair.day']
  return sun.every((path) => known.has(path))
    ? figureOr('daylight.dusk', 'light-all-night', secondsPerDay)
    : fixed(secondsPerDay, 'light-unknown')
}

/** One driver has the harrow and then the blade, and every water truck has one. */
const drivers = (known: ReadonlySet<string>): Record<'harrows' | 'trucks', Binding> => ({
  harrows: known.has('gear.harrow.width') ? fixed(1, 'one-driver') : none('nothing-harrows'),
  trucks: known.has('gear.spray.tank') ? figure('fleet.all') : none('no-water-truck'),
})

/** Race days by the clock, with the crew and the water that they take. */
export function racingUses(known: ReadonlySet<string>): readonly Use[] {
  if (!known.has('race-days.first-post')) return [...between(known), training]
  const day = dayOf(known)
  const rounds = known.has('gear.spray.tank')
    ? fact('practice.race-day.rounds')
    : none('no-water-truck')
  return [
    ...between(known),
    use('clock', raceDayClock, {
      first: fact('race-days.first-post'),
      races: fact('race-days.races'),
      interval,
      breakEvery: fact('race-days.break-every'),
      pause,
      warmUp: fact('practice.warm-up'),
      check: fact('practice.opening-check'),
      ...day,
      walk: fact('practice.opening-walk'),
      soak: fact('practice.water.soak'),
      rounds,
      light: light(known),
      longest: fact('practice.long-day'),
    }),
    ...water(known),
    training,
    use('crew-day', crewDay, {
      start: figure('clock.start'),
      water: figure('clock.water'),
      look: figure('clock.look'),
      after: figure('clock.after'),
      done: figure('clock.done'),
      walkers: fact('practice.walkers'),
      ...drivers(known),
      left: figure('clock.left'),
      shifts: figure('clock.shifts'),
      people: fact('crew.race-day'),
    }),
  ]
}

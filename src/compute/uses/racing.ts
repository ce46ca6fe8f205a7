import { crewDay } from '../people/crew-day.ts'
import { lesson } from '../people/lesson.ts'
import { betweenRaces } from '../racing/between-races.ts'
import { intervalClock } from '../racing/interval-clock.ts'
import { raceDayClock } from '../racing/race-day-clock.ts'
import { raceDayWater, raceDayWaterFromStore } from '../racing/race-day-water.ts'
import type { ReasonId } from './reasons.ts'
import { type Binding, fact, figure, fixed, type Use, use } from './use.ts'

const none = (why: ReasonId): Binding => fixed(0, why)
/** The interval, and what of it belongs to horses. */
const gap = {
  interval: fact('race-days.interval'),
  clear: fact('practice.clear-track'),
  parade: fact('practice.open-before'),
  reserve: fact('practice.kept-in-hand'),
}
const { interval } = gap

/** What fits between races with the harrow at hand, and by which minute. */
function between(known: ReadonlySet<string>): Use[] {
  if (!known.has('gear.harrow.width')) return []
  return [
    use('between', betweenRaces, {
      ...gap,
      whole: figure('harrow.time'),
      all: figure('harrow.laps'),
      gain: figure('harrow.effective'),
    }),
    use('gap', intervalClock, {
      ...gap,
      lap: figure('between.lap'),
      laps: figure('between.laps'),
      whole: figure('harrow.laps'),
      rail: figure('rail.length'),
      speed: known.has('gear.spray.tank') ? figure('pass.speed') : none('no-water-truck'),
    }),
  ]
}

type Day = {
  readonly harrow: Binding
  readonly pullBack: Binding
  readonly round: Binding
  readonly rounds: Binding
}

/**
 * The harrow is the drag harrow, or the conditioner where there is none; what nobody here can do
 * takes no time.
 */
function dayOf(known: ReadonlySet<string>): Day {
  const spray = known.has('gear.spray.tank')
  return {
    harrow: known.has('gear.harrow.width')
      ? figure('harrow.time')
      : known.has('gear.condition.width')
        ? figure('condition.time')
        : none('nothing-harrows'),
    pullBack: known.has('gear.grade.width') ? figure('grade-band.time') : none('no-grader'),
    round: spray ? figure('round.time') : none('no-water-truck'),
    rounds: spray ? figure('supply.rounds') : none('no-water-truck'),
  }
}

function water(known: ReadonlySet<string>): Use[] {
  const needed = [
    'gear.spray.tank',
    'climate.tmax',
    'climate.tmin',
    'place.latitude',
    'place.longitude',
    'fair.day-of-year',
    'fair.zone',
  ]
  if (!needed.every((path) => known.has(path))) return []
  const bindings = {
    rate: figure('air.rate'),
    area: figure('area.total'),
    load: figure('cycle.water'),
    usable: fact('gear.spray.usable'),
    cycle: figure('cycle.time'),
    spread: figure('cycle.spread'),
    trucks: fact('gear.spray.count'),
    rise: figure('daylight.rise'),
    set: figure('daylight.set'),
    start: figure('clock.start'),
    done: figure('clock.done'),
    horses: figure('clock.horses'),
    first: fact('race-days.first-post'),
    last: figure('clock.last'),
    ...gap,
  }
  const recharge = known.has('water.recharge') ? fact('water.recharge') : none('no-refill')
  return [
    known.has('water.storage')
      ? use('day-water', raceDayWaterFromStore, {
          ...bindings,
          full: fact('water.storage'),
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

/** Race days by the clock, with the crew and the water that they take. */
export function racingUses(known: ReadonlySet<string>): readonly Use[] {
  if (!known.has('race-days.first-post')) return [...between(known), training]
  const { rounds, ...day } = dayOf(known)
  const first = fact('race-days.first-post')
  const walk = fact('practice.opening-walk')
  return [
    ...between(known),
    use('clock', raceDayClock, {
      first,
      races: fact('race-days.races'),
      interval,
      warmUp: fact('practice.warm-up'),
      check: fact('practice.opening-check'),
      ...day,
      walk,
      soak: fact('practice.water.soak'),
      rounds: known.has('gear.spray.tank')
        ? fact('practice.race-day.rounds')
        : none('no-water-truck'),
    }),
    ...water(known),
    training,
    use('crew-day', crewDay, {
      ...day,
      rounds,
      walk,
      walkers: fact('practice.walkers'),
      first,
      after: figure('clock.after'),
      people: fact('crew.race-day'),
    }),
  ]
}

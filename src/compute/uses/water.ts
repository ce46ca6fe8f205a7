import { fleet, fleetOfThree, fleetOfTwo } from '../water/fleet.ts'
import { moistureByTruck, moistureToAdd, onePoint } from '../water/moisture.ts'
import { waterRound, waterRoundOfThree, waterRoundOfTwo } from '../water/round.ts'
import { storeDay } from '../water/store.ts'
import { raceDaySupply, sprayPass, tankRun, truckCycle } from '../water/truck.ts'
import { type Binding, fact, figure, fixed, type Use, use } from './use.ts'

const layer = {
  area: figure('area.total'),
  depth: fact('cushion.depth.target'),
  weight: fact('cushion.unit-weight.worked'),
}

/** Nothing stands in for a moisture that nobody has measured: a deficit is not made up. */
const moisture = {
  target: fact('cushion.moisture.target'),
  found: fact('cushion.moisture.found'),
}

/** When there is water on a race day, beside the rounds before the first race. */
function raceDay(known: ReadonlySet<string>): Record<'after' | 'breaks' | 'lapsInBreak', Binding> {
  return {
    after: fixed(1, 'after-the-card'),
    breaks: known.has('race-days.first-post') ? figure('clock.breaks') : fixed(0, 'no-program'),
    lapsInBreak: known.has('gear.harrow.width')
      ? figure('break.water-laps')
      : fixed(0, 'nothing-harrows'),
  }
}

const secondKind = {
  trucks2: fact('second-truck.count'),
  load2: fact('second-truck.load'),
  away2: fact('second-truck.away'),
}
const thirdKind = {
  trucks3: fact('third-truck.count'),
  load3: fact('third-truck.load'),
  away3: fact('third-truck.away'),
}
const bars = {
  depth: fact('practice.water.pass-depth'),
  flow2: fact('second-truck.flow'),
  width2: fact('second-truck.spray-width'),
}
const thirdBar = { flow3: fact('third-truck.flow'), width3: fact('third-truck.spray-width') }

/** All trucks side by side, and a round with them: of one kind, of two or of three. */
function byKinds(known: ReadonlySet<string>): readonly Use[] {
  const filling = { fillFlow: fact('water.fill-flow'), points: fact('water.fill-points') }
  const first = {
    trucks: fact('gear.spray.count'),
    load: figure('cycle.water'),
    cycle: figure('cycle.time'),
    ...filling,
  }
  const all = { ...first, speed: figure('pass.speed'), reach: figure('calibrate.distance') }
  const round = {
    ...first,
    area: figure('area.total'),
    depth: bars.depth,
    sprayWidth: fact('gear.spray.spray-width'),
    distance: figure('spray.distance'),
  }
  if (known.has('third-truck.count'))
    return [
      use('round', waterRoundOfThree, { ...round, ...secondKind, ...thirdKind }),
      use('fleet', fleetOfThree, { ...all, ...secondKind, ...thirdKind, ...bars, ...thirdBar }),
    ]
  if (known.has('second-truck.count'))
    return [
      use('round', waterRoundOfTwo, { ...round, ...secondKind }),
      use('fleet', fleetOfTwo, { ...all, ...secondKind, ...bars }),
    ]
  return [use('round', waterRound, round), use('fleet', fleet, all)]
}

const store = (known: ReadonlySet<string>): Use =>
  use('store', storeDay, {
    full: fact('water.storage'),
    morning: fact('store.morning'),
    need: figure('supply.need'),
    usable: fact('gear.spray.usable'),
    recharge: known.has('water.recharge') ? fact('water.recharge') : fixed(0, 'no-refill'),
    hours: fact('water.hours'),
  })

/** Figures of watering: what the cushion needs, what the truck gives, what the supply allows. */
export function waterUses(known: ReadonlySet<string>): readonly Use[] {
  const point = use('point', onePoint, layer)
  if (!known.has('gear.spray.tank'))
    return [use('layer', moistureToAdd, { ...layer, ...moisture }), point]
  const flow = fact('gear.spray.flow')
  const sprayWidth = fact('gear.spray.spray-width')
  const tank = fact('gear.spray.tank')
  const usable = fact('gear.spray.usable')
  const depth = fact('practice.water.pass-depth')
  const fillFlow = fact('water.fill-flow')
  // Trucks that are not alike count as so many of their mean, each with its wait at the hose.
  const delivery = known.has('second-truck.count')
    ? { load: figure('fleet.mean'), cycle: figure('fleet.turn'), trucks: figure('fleet.all') }
    : { load: figure('cycle.water'), cycle: figure('cycle.time'), trucks: fact('gear.spray.count') }
  return [
    use('layer', moistureByTruck, {
      ...layer,
      ...moisture,
      passDepth: depth,
      extra: figure('round.extra'),
      ...delivery,
      fillFlow,
      points: fact('water.fill-points'),
      soak: fact('practice.water.soak'),
    }),
    point,
    use('pass', sprayPass, {
      flow,
      sprayWidth,
      usual: fact('gear.spray.speed'),
      wanted: depth,
    }),
    ...byKinds(known),
    use('cycle', truckCycle, {
      tank,
      usable,
      fillFlow,
      flow,
      travel: fact('gear.spray.travel'),
    }),
    use('calibrate', tankRun, { tank, usable, depth, sprayWidth, flow }),
    use('supply', raceDaySupply, {
      round: figure('round.loads'),
      before: fact('practice.race-day.rounds'),
      ...raceDay(known),
      rail: figure('rail.length'),
      reach: figure('fleet.range'),
      sprayWidth,
      load: figure('round.each'),
      fillFlow,
      points: fact('water.fill-points'),
    }),
    ...(known.has('water.storage') ? [store(known)] : []),
  ]
}

import { moistureByTruck, moistureToAdd, onePoint } from '../water/moisture.ts'
import { raceDaySupply, sprayPass, tankRun, truckCycle, waterRound } from '../water/truck.ts'
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
  const delivery = {
    load: figure('cycle.water'),
    cycle: figure('cycle.time'),
    trucks: fact('gear.spray.count'),
  }
  return [
    use('layer', moistureByTruck, {
      ...layer,
      ...moisture,
      passDepth: depth,
      extra: figure('round.extra'),
      ...delivery,
      soak: fact('practice.water.soak'),
    }),
    point,
    use('pass', sprayPass, {
      flow,
      sprayWidth,
      usual: fact('gear.spray.speed'),
      wanted: depth,
    }),
    use('round', waterRound, {
      area: figure('area.total'),
      depth,
      sprayWidth,
      distance: figure('spray.distance'),
      ...delivery,
    }),
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
      reach: figure('calibrate.distance'),
      load: figure('cycle.water'),
      fillFlow,
    }),
  ]
}

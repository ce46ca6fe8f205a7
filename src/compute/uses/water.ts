import { moistureByTruck, moistureToAdd, onePoint } from '../water/moisture.ts'
import { raceDaySupply, sprayPass, tankRun, truckCycle, waterRound } from '../water/truck.ts'
import { type Binding, fact, figure, fixed, type Use, use } from './use.ts'

/** Without a moisture test the example is a usual dry day: two points below what is wanted. */
const dryDay = 0.02

const layer = {
  area: figure('area.total'),
  depth: fact('cushion.depth.target'),
  weight: fact('cushion.unit-weight.worked'),
}

function moisture(known: ReadonlySet<string>): { target: Binding; found: Binding } {
  if (known.has('cushion.moisture.found'))
    return { target: fact('cushion.moisture.target'), found: fact('cushion.moisture.found') }
  return {
    target: fixed(
      dryDay,
      'an example: two points are missing, since no moisture has been measured',
    ),
    found: fixed(0, 'counted from the moisture found'),
  }
}

/** Figures of watering: what the cushion needs, what the truck gives, what the supply allows. */
export function waterUses(known: ReadonlySet<string>): readonly Use[] {
  const point = use(41, 'point', onePoint, layer)
  if (!known.has('gear.spray.tank'))
    return [use(40, 'layer', moistureToAdd, { ...layer, ...moisture(known) }), point]
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
    use(40, 'layer', moistureByTruck, {
      ...layer,
      ...moisture(known),
      passDepth: depth,
      ...delivery,
      soak: fact('practice.water.soak'),
    }),
    point,
    use(42, 'pass', sprayPass, {
      flow,
      sprayWidth,
      usual: fact('gear.spray.speed'),
      wanted: depth,
    }),
    use(44, 'round', waterRound, { area: figure('area.total'), depth, ...delivery }),
    use(45, 'cycle', truckCycle, {
      tank,
      usable,
      fillFlow,
      flow,
      travel: fact('gear.spray.travel'),
    }),
    use(46, 'calibrate', tankRun, { tank, usable, depth, sprayWidth, flow }),
    use(49, 'supply', raceDaySupply, {
      round: figure('round.water'),
      before: fact('practice.race-day.rounds'),
      races: fact('race-days.races'),
      every: fact('practice.rounds-every'),
      fillFlow,
    }),
  ]
}

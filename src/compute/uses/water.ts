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
    target: fixed(dryDay, 'two-points-missing'),
    found: fixed(0, 'from-moisture-found'),
  }
}

/** Figures of watering: what the cushion needs, what the truck gives, what the supply allows. */
export function waterUses(known: ReadonlySet<string>): readonly Use[] {
  const point = use('point', onePoint, layer)
  if (!known.has('gear.spray.tank'))
    return [use('layer', moistureToAdd, { ...layer, ...moisture(known) }), point]
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
      ...moisture(known),
      passDepth: depth,
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
    use('round', waterRound, { area: figure('area.total'), depth, ...delivery }),
    use('cycle', truckCycle, {
      tank,
      usable,
      fillFlow,
      flow,
      travel: fact('gear.spray.travel'),
    }),
    use('calibrate', tankRun, { tank, usable, depth, sprayWidth, flow }),
    use('supply', raceDaySupply, {
      round: figure('round.water'),
      before: fact('practice.race-day.rounds'),
      races: fact('race-days.races'),
      every: fact('practice.rounds-every'),
      fillFlow,
    }),
  ]
}

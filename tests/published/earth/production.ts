import { coverage } from '../../../src/compute/coverage/coverage.ts'
import {
  drivingTime,
  tripTime,
  trucksInBalance,
  trucksWithSpare,
} from '../../../src/compute/money/hauling.ts'
import { loadingRate, loadRate } from '../../../src/compute/money/loading.ts'
import { wholeUp } from '../../../src/compute/whole-up.ts'
import { toUnit } from '../../../src/model/quantity/format-quantity.ts'
import { type Inputs, type Runner, si } from '../case.ts'

const hourShare = (x: Inputs): number => x.n('minutes_per_hour') / 60

const loader: Runner = (x) => {
  const rate = (working: number): number =>
    toUnit(
      loadingRate(x.si('bucket', 'yd3'), x.n('fill_factor'), x.si('cycle_min', 'min'), working),
      'yd3/h',
    )
  return {
    ideal: rate(1),
    actual: rate(hourShare(x)),
    derated: rate(hourShare(x) * (x.has('extra_factor') ? x.n('extra_factor') : 1)),
  }
}

const armyTrucks: Runner = (x) => ({
  trucks: trucksWithSpare(x.n('truck_cycle'), x.n('load_time')),
  fleet_per_h: toUnit(loadRate(x.si('load_volume', 'yd3'), x.si('load_time', 'min'), 1), 'yd3/h'),
})

const truckCycle: Runner = (x) => {
  const load = x.n('load_passes') * x.si('loader_cycle_s', 's')
  const drive = (speed: string): number =>
    drivingTime(x.si('distance_mi', 'mi'), x.si(speed, 'mph'))
  const cycle = tripTime({
    load,
    haul: drive('speed_loaded'),
    dump: x.si('dump_min', 'min'),
    back: drive('speed_empty'),
    spot: x.si('spot_min', 'min'),
  })
  const each = toUnit(loadRate(x.si('capacity', 'yd3'), cycle, hourShare(x)), 'yd3/h')
  return {
    load_min: toUnit(load, 'min'),
    cycle_min: toUnit(cycle, 'min'),
    balance: trucksInBalance(cycle, load),
    per_truck: each,
    fleet: each * x.n('trucks'),
  }
}

const haulCycle: Runner = (x) => {
  const part = (name: string): number => x.si(`${name}_min`, 'min')
  const cycle = tripTime({
    load: part('load'),
    haul: part('haul'),
    dump: part('dump'),
    back: part('return'),
    spot: part('spot'),
  })
  const trucks = wholeUp(trucksInBalance(cycle, part('load')))
  const rate = toUnit(loadRate(x.si('capacity', 'yd3'), cycle, hourShare(x)), 'yd3/h')
  return { cycle: toUnit(cycle, 'min'), rate, trucks, fleet: trucks * rate }
}

const team: Runner = (x) => {
  const cycle = x.si('load_min', 'min') + x.si('exchange_min', 'min')
  return {
    loader_rate: toUnit(loadRate(x.si('truck_capacity', 'yd3'), cycle, x.n('efficiency')), 'yd3/h'),
  }
}

const blade: Runner = (x) => {
  const strip = x.si('strip_width', 'ft')
  const shape = {
    straight: 180,
    radius: 70,
    widthStraights: strip,
    widthTurns: strip,
    speed: 1,
    efficiency: 1,
    machines: 1,
    passes: 1,
  }
  const { effective, strips } = coverage.compute({
    ...shape,
    width: x.si('blade_length', 'ft'),
    angle: x.si('angle_deg', '°'),
    overlap: x.si('overlap', 'ft'),
  })
  return { effective_width: toUnit(Number(effective), 'ft'), passes: Number(strips) }
}

export const production: Readonly<Record<string, Runner>> = {
  blade_passes: blade,
  loader_production: loader,
  travel_time_88: (x) => ({
    minutes: toUnit(drivingTime(x.si('distance_ft', 'ft'), x.si('speed_mph', 'mph')), 'min'),
  }),
  trucks_fm: armyTrucks,
  truck_cycle: truckCycle,
  haul_cycle: haulCycle,
  team_balance: team,
  loads_per_hour: (x) => ({
    loads: x.list('cycle_min').map((cycle) => 3600 * loadRate(1, si(cycle, 'min'), hourShare(x))),
  }),
}

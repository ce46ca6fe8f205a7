import { rolling } from '../../../src/compute/coverage/rolling.ts'
import { timedSpeed } from '../../../src/compute/coverage/timed-speed.ts'
import { sheetFlow } from '../../../src/compute/drainage/sheet-flow.ts'
import { contactPressure } from '../../../src/compute/sealing/contact-pressure.ts'
import { moistureToAdd, waterDensity } from '../../../src/compute/water/moisture.ts'
import { waterRound } from '../../../src/compute/water/round.ts'
import { sprayPressure } from '../../../src/compute/water/spray-pressure.ts'
import { sprayPass, tankRun, truckCycle } from '../../../src/compute/water/truck.ts'
import { evaporableWater } from '../../../src/compute/weather/bare-soil.ts'
import { heatIndex, windChill } from '../../../src/compute/weather/felt-temperature.ts'
import { rainBalance } from '../../../src/compute/weather/rain-balance.ts'
import { toUnit } from '../../../src/model/quantity/format-quantity.ts'
import { type Answers, type Inputs, type Runner, si } from '../case.ts'

const given = (
  out: Readonly<Record<string, number | { refused: string }>>,
  name: string,
): number => {
  const value = out[name]
  if (typeof value !== 'number') throw new Error(`${name} was refused`)
  return value
}

/** Water on an area, through the calculation of a round: m² and m in, gallons out. */
const roundGallons = (areaFt2: number, depthIn: number): number =>
  toUnit(
    given(
      waterRound.compute({
        // A meter wide and as long as it takes: no overlap.
        area: si(areaFt2, 'ft2'),
        sprayWidth: 1,
        distance: si(areaFt2, 'ft2'),
        depth: si(depthIn, 'in'),
        load: 1,
        cycle: 60,
        trucks: 1,
        fillFlow: 0.1,
        points: 1,
      }),
      'water',
    ),
    'gal',
  )

/** Gallons an acre of a pass: flow gal/min, speed mph, width ft. */
const gallonsAnAcre = (gpm: number, mph: number, ft: number): number => {
  const depth = given(
    sprayPass.compute({
      flow: si(gpm, 'gal/min'),
      sprayWidth: si(ft, 'ft'),
      usual: si(mph, 'mph'),
      wanted: 0.001,
    }),
    'depth',
  )
  return toUnit(depth * si(1, 'acre'), 'gal')
}

/** How far, ft, an ounce reaches at a gallon an acre: a tank of one ounce, all of it used. */
const ounceCourse = (width: number): number => {
  const run = tankRun.compute({
    tank: si(1, 'gal') / 128,
    usable: 1,
    depth: si(1, 'gal') / si(1, 'acre'),
    sprayWidth: width,
    flow: 1,
  })
  return toUnit(given(run, 'distance'), 'ft')
}

/** Mass of water, kg, for dry material of a mass (kg) to gain points of moisture (percent). */
const waterFor = (dry: number, now: number, target: number): number => {
  // One square meter deep enough to hold the mass at one kilogram a liter; negative means that it
  // must dry.
  const [low, high, sign] = now <= target ? [now, target, 1] : [target, now, -1]
  return (
    sign *
    given(
      moistureToAdd.compute({
        area: dry / 1000,
        depth: 1,
        weight: 1000,
        target: high / 100,
        found: low / 100,
      }),
      'water',
    ) *
    waterDensity
  )
}

/** Parts of a rain and dry days for one end of what is not known: both ends are given the same. */
function balance(x: Inputs): Answers {
  const [worked, rho] = [x.si('worked', 'lb/ft3'), x.si('rho', 'lb/ft3')]
  const packed = si(140, 'lb/ft3')
  const same = (name: string, value: number) => ({
    [`${name}Early`]: value,
    [`${name}Late`]: value,
  })
  const input = {
    rain: x.si('rain', 'in'),
    depth: x.si('depth', 'in'),
    unitWeight: worked,
    packed,
    solids: x.n('G') * 62.4 * si(1, 'lb/ft3'),
    target: x.n('start'),
    held: x.n('held'),
    ...same('pressed', (rho - worked) / (packed - worked)),
    ...same('fill', x.n('a')),
    ...same('base', x.si('base_take', 'in')),
    ...same('pond', x.si('pond_room', 'in')),
    ...same('draw', x.n('kc')),
    rate: x.si('et0', 'in/day'),
    share: 1,
    // A day of daylight is a day, so that the hours divided by it are days.
    daylight: 86_400,
  }
  const out = rainBalance.compute(input as Parameters<typeof rainBalance.compute>[0])
  const inches = (name: string): number => toUnit(given(out, name), 'in')
  const held = x.si('depth', 'in') * worked
  return {
    cushion: inches('layer-early'),
    base: inches('base-early'),
    pond: inches('stands-early'),
    run: inches('runs-early'),
    full: x.n('start') + (1000 * given(out, 'room-early')) / held,
    heel_days: given(out, 'heel-early') / 86_400,
    goal_days: given(out, 'wanted-late') / 86_400,
  }
}

/** A drum that sinks in as far everywhere, against a tire. */
function drum(x: Inputs): Answers {
  const out = contactPressure.compute({
    inflation: x.si('tire', 'psi'),
    mass: x.si('load', 'lb'),
    share: 1,
    width: x.si('width', 'in'),
    diameter: x.si('diameter', 'in'),
    leastSink: x.si('sink', 'in'),
    mostSink: x.si('sink', 'in'),
  })
  return {
    contact: toUnit(given(out, 'short'), 'in'),
    pressure: toUnit(given(out, 'hardest'), 'psi'),
    ratio: given(out, 'least'),
  }
}

/** Minutes for a sheet of water under so much rain in an hour. */
function travelMinutes(x: Inputs, rate: number, length = 'ft', rain = 'in'): number {
  const out = sheetFlow.compute({
    length: x.si('L', length),
    slope: x.n('S'),
    roughness: x.n('n'),
    // All of an hour's rain, evenly: a twelfth of it in five minutes.
    hourRain: si(rate, rain),
    burstShare: 1 / 12,
    runoff: 1,
    rail: 1,
    widthTurns: 20,
    radius: 70,
  })
  return given(out, 'time') / 60
}

/** Laps of two trucks on a strip of a width. */
function pattern(x: Inputs): Answers {
  const width = x.si('width', 'in')
  const out = rolling.compute({
    straight: 180,
    radius: 69,
    widthStraights: width,
    widthTurns: width,
    tireWidth: x.si('tread', 'in'),
    tiresPerSide: 2,
    gap: x.si('gap', 'in'),
    track: x.si('track', 'in'),
    overlap: x.si('overlap', 'in'),
    speed: 5,
    efficiency: 1,
    machines: x.n('trucks'),
    passes: 1,
  })
  return {
    group_laps: given(out, 'closing') + 1,
    side_band: toUnit(given(out, 'strip'), 'in'),
    block_laps: given(out, 'block'),
    block: toUnit(given(out, 'width'), 'in'),
    laps: given(out, 'laps'),
    each: given(out, 'each'),
  }
}

const celsius = (f: number): number => ((f - 32) * 5) / 9
const fahrenheit = (c: number): number => (c * 9) / 5 + 32

export const soilAndRain: Readonly<Record<string, Runner>> = {
  spray_pressure: (x) => {
    const flow = x.si('gpm', 'gal/min')
    const out = sprayPressure.compute({
      flow,
      pressure: x.si('psi', 'psi'),
      other: x.si('other', 'psi'),
      wanted: flow,
    })
    return { gpm: toUnit(given(out, 'flow'), 'gal/min') }
  },
  timed_speed: (x) => ({
    mph: x
      .list('s')
      .map((time) =>
        toUnit(given(timedSpeed.compute({ distance: x.si('ft', 'ft'), time }), 'speed'), 'mph'),
      ),
  }),
  tew: (x) => ({ tew: evaporableWater(x.n('theta_fc'), x.n('theta_wp'), x.n('ze')) }),
  addwater_dry: (x) => {
    const mass = waterFor(x.n('dry_density') * x.n('volume'), x.n('w_now'), x.n('w_target'))
    return {
      water_mass: mass,
      water_kl: x.has('kn_per_m3') ? mass / x.n('kn_per_m3') : undefined,
      water_gal: x.has('lb_per_gal') ? mass / x.n('lb_per_gal') : undefined,
    }
  },
  addwater_moist: (x) => {
    const mass = waterFor(
      x.n('moist_mass') / (1 + x.n('w_now') / 100),
      x.n('w_now'),
      x.n('w_target'),
    )
    return { water_mass: mass, water_gal: mass / 8.3454 }
  },
  borrow: (x) => ({
    water_mass: waterFor(x.n('fill_dry') * x.n('fill_vol'), x.n('borrow_w'), x.n('fill_w')),
  }),
  station: (x) => {
    const volume = x.n('length_ft') * x.n('width_ft') * (x.n('thick_in') / 12)
    const pounds = waterFor(volume * x.n('dry_density_pcf'), x.n('w_now'), x.n('w_target'))
    return { water_lb: pounds, water_gal: pounds / x.n('lb_per_gal') }
  },
  depthvol: (x) => ({ gallons: roundGallons(x.n('area_sqft'), x.n('depth_in')) }),
  gpa: (x) => ({ gpa: gallonsAnAcre(x.n('gpm'), x.n('mph'), x.n('w_in') / 12) }),
  gpa_ft: (x) => ({ gpa: gallonsAnAcre(x.n('gpm'), x.n('mph'), x.n('w_ft')) }),
  course128: (x) => ({ distance_ft: ounceCourse(x.si('w_in', 'in')) }),
  course128ft: (x) => ({ distance_ft: ounceCourse(x.si('w_ft', 'ft')) }),
  // What is caught in one minute over that area, ten feet wide.
  oz_fraction: (x) => ({ gpa: gallonsAnAcre(x.n('oz') / 128, x.n('area_sqft') / 10 / 88, 10) }),
  shuttle_cycle: (x) => {
    // Filling and spraying take no time here, so that the whole cycle is the one that the case
    // gives.
    const cycle = truckCycle.compute({
      tank: si(x.n('tank_gal'), 'gal'),
      usable: 1 - x.n('loss_pct') / 100,
      fillFlow: 1e9,
      flow: 1e9,
      travel: x.n('cycle_min') * 60,
    })
    return { gpm: toUnit(given(cycle, 'water') / given(cycle, 'time'), 'gal/min') }
  },
  rain_balance: (x) => balance(x),
  kinematic: (x) => ({ t: travelMinutes(x, x.n('i')) }),
  // Under an inch an hour the formula is its coefficient.
  kinematic_si: (x) => ({ t: travelMinutes(x, x.n('i'), 'm', 'mm') }),
  kinematic_c: (x) => ({ coefficient: travelMinutes(x, 1) }),
  rolling_pattern: (x) => pattern(x),
  drum: (x) => drum(x),
  hi: (x) => ({ hi: heatIndex(x.n('t'), x.n('rh')) }),
  hi_c: (x) => ({ hi: celsius(heatIndex(fahrenheit(x.n('t')), x.n('rh'))) }),
  wc: (x) => ({ wc: windChill(x.n('t'), x.n('v')) }),
  wc_metric: (x) => ({
    wc_f: windChill(fahrenheit(x.n('t_c')), toUnit(x.si('v_kmh', 'km/h'), 'mph')),
  }),
}

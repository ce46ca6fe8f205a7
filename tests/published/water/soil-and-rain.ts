import { moistureToAdd, waterDensity } from '../../../src/compute/water/moisture.ts'
import { sprayPass, tankRun, truckCycle, waterRound } from '../../../src/compute/water/truck.ts'
import { evaporableWater } from '../../../src/compute/weather/bare-soil.ts'
import { heatIndex, windChill } from '../../../src/compute/weather/felt-temperature.ts'
import { retention, runoffDepth } from '../../../src/compute/weather/runoff.ts'
import { toUnit } from '../../../src/model/quantity/format-quantity.ts'
import { type Runner, si } from '../case.ts'

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
        area: si(areaFt2, 'ft2'),
        depth: si(depthIn, 'in'),
        load: 1,
        cycle: 60,
        trucks: 1,
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

const celsius = (f: number): number => ((f - 32) * 5) / 9
const fahrenheit = (c: number): number => (c * 9) / 5 + 32

export const soilAndRain: Readonly<Record<string, Runner>> = {
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
  cn: (x) => ({
    q: runoffDepth(x.n('p'), retention(x.n('cn'))),
    s: retention(x.n('cn')),
    ia: 0.2 * retention(x.n('cn')),
  }),
  cn_s: (x) => ({ q: runoffDepth(x.n('p'), x.n('s')) }),
  hi: (x) => ({ hi: heatIndex(x.n('t'), x.n('rh')) }),
  hi_c: (x) => ({ hi: celsius(heatIndex(fahrenheit(x.n('t')), x.n('rh'))) }),
  wc: (x) => ({ wc: windChill(x.n('t'), x.n('v')) }),
  wc_metric: (x) => ({
    wc_f: windChill(fahrenheit(x.n('t_c')), toUnit(x.si('v_kmh', 'km/h'), 'mph')),
  }),
}

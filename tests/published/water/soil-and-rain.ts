import { moistureToAdd, waterDensity } from '../../../src/compute/water/moisture.ts'
import { sprayPass, tankRun, truckCycle, waterRound } from '../../../src/compute/water/truck.ts'
import {
  afterWater,
  evaporableWater,
  evaporationDay,
  reduction,
} from '../../../src/compute/weather/bare-soil.ts'
import {
  heatCategory,
  heatIndex,
  windChill,
  windChillMetric,
} from '../../../src/compute/weather/felt-temperature.ts'
import {
  channelVelocity,
  rationalFlow,
  retention,
  runoffDepth,
  shallowVelocity,
  sheetFlowTime,
  travelTime,
  weightedCurveNumber,
  weightedMean,
} from '../../../src/compute/weather/runoff.ts'
import { toUnit } from '../../../src/model/quantity/format-quantity.ts'
import { type Answers, type Inputs, type Runner, si } from '../earth/case.ts'

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

function evaporation(x: Inputs): Answers {
  const shared = { readily: x.n('rew'), total: x.n('tew'), kcMax: x.n('kcmax') }
  const d = evaporationDay({
    ...shared,
    start: x.n('de_start'),
    kcb: x.n('kcb'),
    exposed: x.n('exposed'),
    wetted: x.n('fw'),
    eto: x.n('eto'),
  })
  return { few: d.few, kr: d.kr, ke: d.ke, e: d.e, de_end: d.end }
}

/** A run of days: answers are named with the day, or listed. */
function evaporationRun(x: Inputs): Answers {
  const at = (name: string, i: number): number => x.list(name)[i] ?? x.list(name)[0] ?? 0
  const days = Math.max(...['eto', 'kcb', 'exposed', 'fw'].map((name) => x.list(name).length))
  let depleted = x.n('de0')
  const answers: Record<string, number> = {}
  for (let i = 0; i < days; i++) {
    const start = afterWater(
      depleted,
      x.has('rain') ? at('rain', i) : 0,
      x.has('irrig') ? at('irrig', i) : 0,
      at('fw', i),
    )
    const d = evaporationDay({
      start,
      readily: x.n('rew'),
      total: x.n('tew'),
      kcMax: x.n('kcmax'),
      kcb: at('kcb', i),
      exposed: at('exposed', i),
      wetted: at('fw', i),
      eto: at('eto', i),
    })
    depleted = d.end
    Object.assign(answers, {
      [`few_${i + 1}`]: d.few,
      [`kr_${i + 1}`]: d.kr,
      [`ke_${i + 1}`]: d.ke,
      [`e_${i + 1}`]: d.e,
      [`de_end_${i + 1}`]: d.end,
    })
  }
  return answers
}

const celsius = (f: number): number => ((f - 32) * 5) / 9
const fahrenheit = (c: number): number => (c * 9) / 5 + 32

/**
 * The chart leaves the adjustments out; the cases of its moist corner say that they come from the
 * form.
 */
const indexOf = (x: Inputs): Answers => ({ hi: heatIndex(x.n('t'), x.n('rh')) })

function borrow(x: Inputs): Answers {
  const dry = x.n('fill_dry') * x.n('fill_vol')
  const borrowDry = x.n('borrow_wet') / (1 + x.n('borrow_w') / 100)
  return {
    borrow_dry_density: borrowDry,
    borrow_vol: dry / borrowDry,
    dry_mass: dry,
    water_mass: waterFor(dry, x.n('borrow_w'), x.n('fill_w')),
  }
}

export const soilAndRain: Readonly<Record<string, Runner>> = {
  tew: (x) => ({ tew: evaporableWater(x.n('theta_fc'), x.n('theta_wp'), x.n('ze')) }),
  evapday: evaporation,
  evaprun: evaporationRun,
  kr: (x) => ({ kr: reduction(x.n('de'), x.n('rew'), x.n('tew')) }),
  grav: (x) => {
    const w = (x.n('m_wet') - x.n('m_dry')) / x.n('m_dry')
    const bulk = x.n('m_dry') / x.n('vol')
    return {
      w,
      bulk_density: bulk,
      theta: w * bulk,
      porosity: 1 - bulk / x.n('rho_solid'),
      depth: w * bulk * x.n('layer'),
    }
  },
  deficit: (x) => ({ deficit: (x.n('theta_fc') - x.n('theta')) * x.n('z') * 1000 }),
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
  borrow,
  station: (x) => {
    const volume = x.n('length_ft') * x.n('width_ft') * (x.n('thick_in') / 12)
    const pounds = waterFor(volume * x.n('dry_density_pcf'), x.n('w_now'), x.n('w_target'))
    return { volume_cf: volume, water_lb: pounds, water_gal: pounds / x.n('lb_per_gal') }
  },
  depletion: (x) => ({
    dep_hi: x.n('awc_max') * (1 - x.n('avail_lo') / 100),
    dep_lo: x.n('awc_min') * (1 - x.n('avail_hi') / 100),
  }),
  depthvol: (x) => ({
    cubic_ft: (x.n('area_sqft') * x.n('depth_in')) / 12,
    gallons: roundGallons(x.n('area_sqft'), x.n('depth_in')),
  }),
  roof: (x) => ({
    gallons: (roundGallons(x.n('area_sqft'), x.n('depth_in')) * x.n('factor')) / roundGallons(1, 1),
  }),
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
  cnweight: (x) => {
    const cn = weightedCurveNumber(x.list('cns'), x.list('areas'))
    return { cn_rounded: cn, q: runoffDepth(x.n('p'), retention(cn)) }
  },
  rational: (x) => ({ q: rationalFlow(x.n('c'), x.n('i'), x.n('a')) }),
  cweight: (x) => ({ c: weightedMean(x.list('cs'), x.list('areas')) }),
  shallow: (x) => {
    const v = x.has('v') ? x.n('v') : shallowVelocity(x.n('s'))
    return { v, tt: travelTime(x.n('l'), v) }
  },
  sheet: (x) => ({ tt: sheetFlowTime(x.n('n'), x.n('l'), x.n('p2'), x.n('s')) }),
  channel: (x) => {
    const r = x.n('a') / x.n('pw')
    const v = channelVelocity(x.n('n'), r, x.n('s'))
    return { r, v, tt: travelTime(x.n('l'), v) }
  },
  hi: indexOf,
  hi_c: (x) => ({ hi: celsius(heatIndex(fahrenheit(x.n('t')), x.n('rh'))) }),
  hicat: (x) => ({ category: heatCategory(heatIndex(x.n('t'), x.n('rh'))) }),
  wc: (x) => ({ wc: windChill(x.n('t'), x.n('v')) }),
  wc_metric: (x) => ({ wc_f: fahrenheit(windChillMetric(x.n('t_c'), x.n('v_kmh'))) }),
}

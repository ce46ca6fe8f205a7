import { calculation, type InputSpec, isRefusal, type Refusal, refuse } from '../calculation.ts'
import { wholeUp } from '../whole-up.ts'
import { fillFlow, fillPoints } from './fleet.ts'
import { timeOfLoads } from './truck-trips.ts'

/** Density of water, kg/m³, at field temperatures. */
export const waterDensity = 1000

const area = { symbol: 'A', kind: 'area', range: [500, 200000] } as const
const depth = { symbol: 'd', kind: 'depth', range: [0, 0.31] } as const
const weight = { symbol: '\\rho_d', kind: 'unitWeight', range: [600, 2800] } as const

const moistureInputs = {
  area,
  depth,
  weight,
  target: { symbol: 'w_1', kind: 'fineShare', range: [0, 0.4] },
  found: { symbol: 'w_0', kind: 'fineShare', range: [0, 0.5] },
} as const

const moistureOutputs = {
  water: {
    symbol: 'V',
    kind: 'waterVolume',
    tex: '\\frac{@area\\,@depth\\,@weight\\,(@target - @found)}{\\rho_{water}}',
    round: 'up',
  },
  depth: { symbol: 'd_w', kind: 'waterDepth', tex: '\\frac{@water}{@area}' },
} as const

function addMoisture(x: Readonly<Record<keyof typeof moistureInputs, number>>): {
  water: number | Refusal<'wetter-than-wanted'>
  depth: number | Refusal<'wetter-than-wanted'>
} {
  const water = (x.area * x.depth * x.weight * (x.target - x.found)) / waterDensity
  if (water >= 0) return { water, depth: water / x.area }
  const no = refuse('wetter-than-wanted')
  return { water: no, depth: no }
}

/** Water (m³) that raises the moisture of a layer, by dry weight: A·d·ρ_d·(w₁ − w₀)/ρ_w. */
export const moistureToAdd = calculation({
  id: 'moisture-to-add',
  sources: ['nrcs-feel', 'fm-5-434'],
  inputs: moistureInputs,
  outputs: moistureOutputs,
  refusals: ['wetter-than-wanted'],
  compute: addMoisture,
})

const passDepth: InputSpec = { symbol: 'd_p', kind: 'waterDepth', range: [0.0001, 0.013] }
/** What is spread over what is needed: overlaps get twice. */
export const extra: InputSpec = { symbol: 'e', kind: 'ratio', range: [1, 4] }
const load: InputSpec = { symbol: 'V_1', kind: 'waterVolume', range: [0.01, 60] }
const cycle: InputSpec = { symbol: 't_1', kind: 'minutes', range: [30, 40000] }
const trucks: InputSpec = { symbol: 'm', kind: 'count', range: [1, 20] }
const soak: InputSpec = { symbol: 't_w', kind: 'minutes', range: [0, 43200] }

/**
 * The same with the truck at hand: whole loads, passes that soak in, and time (s) with the waits
 * between them and for the hose.
 */
export const moistureByTruck = calculation({
  id: 'moisture-by-truck',
  sources: ['nrcs-feel', 'fm-5-434', 'common-practice'],
  inputs: {
    ...moistureInputs,
    passDepth,
    extra,
    load,
    cycle,
    trucks,
    fillFlow,
    points: fillPoints,
    soak,
  },
  outputs: {
    ...moistureOutputs,
    loads: {
      symbol: 'n',
      kind: 'whole',
      tex: '\\left\\lceil \\frac{@extra\\,@water}{@load} \\right\\rceil',
    },
    passes: {
      symbol: 'p',
      kind: 'whole',
      tex: '\\left\\lceil \\frac{@water}{@area\\,@passDepth} \\right\\rceil',
    },
    time: {
      symbol: 't',
      kind: 'duration',
      tex: '\\max\\left(\\max_{k\\,@trucks < @loads}\\left(k\\,@cycle + \\left\\lfloor \\frac{@loads - 1 - k\\,@trucks}{@points} \\right\\rfloor \\frac{@load}{@fillFlow}\\right) + @cycle,\\; (@passes - 1)\\,@soak\\right)',
    },
  },
  refusals: ['wetter-than-wanted'],
  compute: (x) => {
    const { water, depth } = addMoisture(x)
    if (isRefusal(water)) return { water, depth, loads: water, passes: water, time: water }
    const loads = wholeUp((x.extra * water) / x.load)
    const passes = wholeUp(water / (x.area * x.passDepth))
    const fill = x.load / x.fillFlow
    const kind = { count: x.trucks, fill, away: Math.max(0, x.cycle - fill) }
    return {
      water,
      depth,
      loads,
      passes,
      time: Math.max(timeOfLoads(loads, kind, x.points), Math.max(0, passes - 1) * x.soak),
    }
  },
})

/** Water (m³) for one point of moisture: A·d·ρ_d·0.01/ρ_w. */
export const onePoint = calculation({
  id: 'one-point',
  sources: ['nrcs-feel', 'fm-5-434'],
  inputs: { area, depth, weight },
  outputs: {
    water: {
      symbol: 'V_1',
      kind: 'waterVolume',
      tex: '\\frac{0.01\\,@area\\,@depth\\,@weight}{\\rho_{water}}',
    },
  },
  compute: (x) => ({ water: (0.01 * x.area * x.depth * x.weight) / waterDensity }),
})

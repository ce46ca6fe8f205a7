import { calculation, type InputSpec, isRefusal, type Refusal, refuse } from '../calculation.ts'
import { wholeUp } from '../whole-up.ts'

/** Density of water, kg/m³, at field temperatures. */
export const waterDensity = 1000

const area = {
  symbol: 'A',
  label: 'area of the track',
  kind: 'area',
  range: [500, 200000],
} as const
const depth = { symbol: 'd', label: 'depth of the layer', kind: 'depth', range: [0, 0.31] } as const
const weight = {
  symbol: '\\rho_d',
  label: 'dry unit weight of the harrowed cushion',
  kind: 'unitWeight',
  range: [600, 2800],
} as const

const moistureInputs = {
  area,
  depth,
  weight,
  target: { symbol: 'w_1', label: 'wanted moisture', kind: 'fineShare', range: [0, 0.4] },
  found: { symbol: 'w_0', label: 'moisture found', kind: 'fineShare', range: [0, 0.5] },
} as const

const moistureOutputs = {
  water: {
    symbol: 'V',
    label: 'to bring the cushion to its moisture',
    kind: 'waterVolume',
    tex: '\\frac{@area\\,@depth\\,@weight\\,(@target - @found)}{\\rho_w}',
    round: 'up',
  },
  depth: {
    symbol: 'd_w',
    label: 'of water over the whole track',
    kind: 'waterDepth',
    tex: '\\frac{@water}{@area}',
  },
} as const

function addMoisture(x: Readonly<Record<keyof typeof moistureInputs, number>>): {
  water: number | Refusal
  depth: number | Refusal
} {
  const water = (x.area * x.depth * x.weight * (x.target - x.found)) / waterDensity
  if (water >= 0) return { water, depth: water / x.area }
  const no = refuse('the cushion is wetter than wanted: let it dry')
  return { water: no, depth: no }
}

/** Water (m³) that raises the moisture of a layer, by dry weight: A·d·ρ_d·(w₁ − w₀)/ρ_w. */
export const moistureToAdd = calculation({
  id: 'moisture-to-add',
  title: 'Water to bring the cushion to its moisture',
  about:
    'Moisture is counted by dry weight. The water is what the dry weight of the cushion takes to go from the moisture found to the moisture wanted; what dries off meanwhile comes on top.',
  sources: ['nrcs-feel', 'fm-5-434'],
  inputs: moistureInputs,
  outputs: moistureOutputs,
  compute: addMoisture,
})

const passDepth: InputSpec = {
  symbol: 'd_p',
  label: 'most water in one pass that soaks in',
  kind: 'waterDepth',
  range: [0.0001, 0.013],
}
const load: InputSpec = {
  symbol: 'V_1',
  label: 'on the track from one load',
  kind: 'waterVolume',
  range: [0.01, 60],
}
const cycle: InputSpec = {
  symbol: 't_1',
  label: 'from load to load',
  kind: 'minutes',
  range: [30, 40000],
}
const trucks: InputSpec = { symbol: 'm', label: 'trucks', kind: 'count', range: [1, 20] }
const soak: InputSpec = {
  symbol: 't_w',
  label: 'wait between passes',
  kind: 'minutes',
  range: [0, 43200],
}

/**
 * The same with the truck at hand: whole loads, passes that soak in, and time (s) with the waits
 * between them.
 */
export const moistureByTruck = calculation({
  id: 'moisture-by-truck',
  title: 'Water to bring the cushion to its moisture, and the loads for it',
  about: `${moistureToAdd.about} No pass puts down more than soaks in, so the water is divided into passes with a wait between them. The trucks fill while the water soaks in, so the longer of the two sets the time.`,
  sources: ['nrcs-feel', 'fm-5-434', 'common-practice'],
  inputs: { ...moistureInputs, passDepth, load, cycle, trucks, soak },
  outputs: {
    ...moistureOutputs,
    loads: {
      symbol: 'n',
      label: 'loads to bring the cushion to its moisture',
      kind: 'whole',
      tex: '\\left\\lceil \\frac{@water}{@load} \\right\\rceil',
    },
    passes: {
      symbol: 'p',
      label: 'passes, so that each soaks in',
      kind: 'whole',
      tex: '\\left\\lceil \\frac{@water}{@area\\,@passDepth} \\right\\rceil',
    },
    time: {
      symbol: 't',
      label: 'with the waits between passes',
      kind: 'duration',
      tex: '\\max\\left(\\left\\lceil \\frac{@loads}{@trucks} \\right\\rceil @cycle,\\; (@passes - 1)\\,@soak\\right)',
    },
  },
  compute: (x) => {
    const { water, depth } = addMoisture(x)
    if (isRefusal(water)) return { water, depth, loads: water, passes: water, time: water }
    const loads = wholeUp(water / x.load)
    const passes = wholeUp(water / (x.area * x.passDepth))
    return {
      water,
      depth,
      loads,
      passes,
      time: Math.max(wholeUp(loads / x.trucks) * x.cycle, Math.max(0, passes - 1) * x.soak),
    }
  },
})

/** Water (m³) for one point of moisture: A·d·ρ_d·0.01/ρ_w. */
export const onePoint = calculation({
  id: 'one-point',
  title: 'Water for one point of moisture',
  about:
    'What the whole cushion takes to become one percent moister by dry weight. Multiply by the points that are missing.',
  sources: ['nrcs-feel', 'fm-5-434'],
  inputs: { area, depth, weight },
  outputs: {
    water: {
      symbol: 'V_1',
      label: 'for each point of moisture',
      kind: 'waterVolume',
      tex: '\\frac{0.01\\,@area\\,@depth\\,@weight}{\\rho_w}',
    },
  },
  compute: (x) => ({ water: (0.01 * x.area * x.depth * x.weight) / waterDensity }),
})

import { calculation, type InputSpec, type Steps } from '../calculation.ts'
import { wholeUp } from '../whole-up.ts'
import { depthOfPass, fillFlow, fillPoints, furtherTrucks } from './fleet.ts'
import { type Trip, type TruckKind, timeOfLoads, timeOfRound, tripsOfRound } from './truck-trips.ts'

const inputs = {
  area: { symbol: 'A', kind: 'area', range: [500, 200_000] },
  depth: depthOfPass,
  sprayWidth: { symbol: 'W', kind: 'width', range: [0.5, 20] },
  distance: { symbol: 'D', kind: 'longDistance', range: [50, 500_000] },
  load: { symbol: 'V_1', kind: 'waterVolume', range: [0.01, 60] },
  cycle: { symbol: 't_1', kind: 'minutes', range: [30, 40_000] },
  trucks: { symbol: 'm', kind: 'count', range: [1, 60] },
  fillFlow,
  points: fillPoints,
} as const satisfies Readonly<Record<string, InputSpec>>

type Inputs = Readonly<Record<keyof typeof inputs, number>>

const outputs = {
  area: { symbol: 'A_s', kind: 'area', tex: '@sprayWidth\\,@distance' },
  extra: { symbol: 'e', kind: 'ratio', tex: '\\frac{@sprayWidth\\,@distance}{@area}' },
  water: {
    symbol: 'V',
    kind: 'waterVolume',
    tex: '@depth\\,@sprayWidth\\,@distance',
    round: 'up',
  },
  fill: { symbol: 't_f', kind: 'minutes', tex: '\\frac{@load}{@fillFlow}' },
} as const

const alone = {
  symbol: 't_a',
  kind: 'duration',
  tex: '\\left\\lceil \\frac{@water}{@load} \\right\\rceil\\,@cycle',
} as const

/** Water that is really spread, and what one truck alone takes for it. */
function spread(x: Inputs) {
  const sprayed = x.sprayWidth * x.distance
  const water = x.depth * sprayed
  return {
    area: sprayed,
    extra: sprayed / x.area,
    water,
    fill: x.load / x.fillFlow,
    alone: wholeUp(water / x.load) * x.cycle,
  }
}

const firstKind = (x: Inputs): TruckKind => {
  const fill = x.load / x.fillFlow
  return { count: x.trucks, load: x.load, fill, away: Math.max(0, x.cycle - fill) }
}

/**
 * One round over the whole track at a depth: the water that is really spread (m³), overlaps counted,
 * whole loads, time (s) for trucks that are alike, which fill one after another where there are fewer
 * filling points than trucks.
 */
export const waterRound = calculation({
  id: 'water-round',
  sources: ['geometry', 'fire-shuttle'],
  inputs,
  outputs: {
    ...outputs,
    loads: {
      symbol: 'n',
      kind: 'whole',
      tex: '\\left\\lceil \\frac{@water}{@load} \\right\\rceil',
    },
    each: { symbol: 'V_e', kind: 'tankLoad', tex: '@load', round: 'down' },
    time: {
      symbol: 't',
      kind: 'duration',
      tex: '\\max_{k\\,@trucks < @loads}\\left(k\\,@cycle + \\left\\lfloor \\frac{@loads - 1 - k\\,@trucks}{@points} \\right\\rfloor @fill\\right) + @cycle',
    },
    alone,
  },
  compute: (x) => {
    const sum = spread(x)
    const loads = wholeUp(sum.water / x.load)
    return { ...sum, loads, each: x.load, time: timeOfLoads(loads, firstKind(x), x.points) }
  },
})

const further = (count: number, load: number, away: number, flow: number): TruckKind => ({
  count,
  load,
  fill: load / flow,
  away,
})

/** Load by load: which kind of truck, when it fills, leaves full, and has it down. */
const tripSteps = (trips: readonly Trip[]): Steps => ({
  columns: [
    { symbol: 'j' },
    { symbol: 'i' },
    { symbol: 'a_j', kind: 'minutes' },
    { symbol: 'b_j', kind: 'minutes' },
    { symbol: 'e_j', kind: 'minutes' },
  ],
  rows: trips.map((t, j) => [j + 1, t.kind + 1, t.fills, t.full, t.down]),
})

const ofSeveral = {
  ...outputs,
  loads: { symbol: 'n', kind: 'whole', tex: '\\textstyle\\sum_j 1', restsOn: 'all' },
  each: {
    symbol: 'V_e',
    kind: 'tankLoad',
    round: 'down',
    tex: '\\frac{1}{n} \\textstyle\\sum_j V_j',
    restsOn: 'all',
  },
  time: { symbol: 't', kind: 'duration', tex: '\\max_j e_j', restsOn: 'all' },
  alone,
} as const

function several(x: Inputs, kinds: readonly TruckKind[]) {
  const sum = spread(x)
  const trips = tripsOfRound(kinds, x.points, sum.water)
  const put = trips.reduce((total, t) => total + (kinds[t.kind]?.load ?? 0), 0)
  return { ...sum, loads: trips.length, each: put / trips.length, time: timeOfRound(trips) }
}

const two = (x: Inputs & Readonly<Record<keyof (typeof furtherTrucks)[2], number>>) => [
  firstKind(x),
  further(x.trucks2, x.load2, x.away2, x.fillFlow),
]
const three = (
  x: Parameters<typeof two>[0] & Readonly<Record<keyof (typeof furtherTrucks)[3], number>>,
) => [...two(x), further(x.trucks3, x.load3, x.away3, x.fillFlow)]

/** The same with trucks of two kinds, load by load. */
export const waterRoundOfTwo = calculation({
  id: 'water-round-of-two',
  sources: ['geometry', 'fire-shuttle'],
  inputs: { ...inputs, ...furtherTrucks[2] },
  outputs: ofSeveral,
  steps: { trips: (x) => tripSteps(tripsOfRound(two(x), x.points, spread(x).water)) },
  compute: (x) => several(x, two(x)),
})

/** The same with trucks of three kinds. */
export const waterRoundOfThree = calculation({
  id: 'water-round-of-three',
  sources: ['geometry', 'fire-shuttle'],
  inputs: { ...inputs, ...furtherTrucks[2], ...furtherTrucks[3] },
  outputs: ofSeveral,
  steps: { trips: (x) => tripSteps(tripsOfRound(three(x), x.points, spread(x).water)) },
  compute: (x) => several(x, three(x)),
})

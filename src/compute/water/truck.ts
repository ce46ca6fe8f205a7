import { calculation, type InputSpec, refuse } from '../calculation.ts'
import { wholeUp } from '../whole-up.ts'

const tank = { symbol: 'T', label: 'tank', kind: 'waterVolume', range: [0.05, 60] } as const
const usable = {
  symbol: 'u',
  label: 'share of the tank that reaches the track',
  kind: 'share',
  range: [0.3, 1],
} as const
const flow = {
  symbol: 'q',
  label: 'flow of the spray bar',
  kind: 'waterFlow',
  range: [0.00006, 0.1],
} as const
const sprayWidth = {
  symbol: 'W',
  label: 'width that the spray wets evenly',
  kind: 'width',
  range: [0.5, 20],
} as const
const fillFlow = {
  symbol: 'q_f',
  label: 'flow at which the truck is filled',
  kind: 'waterFlow',
  range: [0.0003, 0.13],
} as const
const depth = {
  symbol: 'd',
  label: 'water wanted in one pass',
  kind: 'waterDepth',
  range: [0.0001, 0.013],
} as const
const area = {
  symbol: 'A',
  label: 'area of the track',
  kind: 'area',
  range: [500, 200000],
} as const
const trucks: InputSpec = { symbol: 'm', label: 'trucks', kind: 'count', range: [1, 20] }

/**
 * Depth (m) that one pass puts down at the usual speed, q/(v·W), and the speed (m/s) that puts down
 * just what soaks in. Form of the sprayer calibration GPA = 495 gpm/(mph × ft).
 */
export const sprayPass = calculation({
  id: 'spray-pass',
  title: 'Water in one pass, and the speed for the wanted depth',
  about:
    'What the bar puts down at the usual speed, and how fast to drive so that it puts down just what soaks in. Slower gives more; more than soaks in runs to the rail.',
  sources: ['osu-b817', 'geometry'],
  inputs: {
    flow,
    sprayWidth,
    usual: { symbol: 'v_0', label: 'usual working speed', kind: 'speed', range: [0.2, 14] },
    wanted: depth,
  },
  outputs: {
    depth: {
      symbol: 'd_0',
      label: 'of water in one pass at the usual speed',
      kind: 'waterDepth',
      tex: '\\frac{@flow}{@usual\\,@sprayWidth}',
    },
    speed: {
      symbol: 'v',
      label: 'driving speed for the wanted depth',
      kind: 'speed',
      tex: '\\frac{@flow}{@wanted\\,@sprayWidth}',
    },
  },
  compute: (x) => ({
    depth: x.flow / (x.usual * x.sprayWidth),
    speed: x.flow / (x.wanted * x.sprayWidth),
  }),
})

/** How far (m) and how long (s) one tank lasts at the wanted depth: the check of a calibration. */
export const tankRun = calculation({
  id: 'tank-run',
  title: 'How far one tank reaches',
  about:
    'Fill the tank, spray at the wanted depth, and note distance and time when the bar begins to spit. If they are not these, the flow in the facility file is wrong: put in the usable tank over the time that you found.',
  sources: ['osu-b817', 'geometry'],
  inputs: { tank, usable, depth, sprayWidth, flow },
  outputs: {
    distance: {
      symbol: 'D',
      label: 'reached with one tank',
      kind: 'reach',
      tex: '\\frac{@usable\\,@tank}{@depth\\,@sprayWidth}',
    },
    time: {
      symbol: 't',
      label: 'until the tank is empty',
      kind: 'minutes',
      tex: '\\frac{@usable\\,@tank}{@flow}',
    },
  },
  compute: (x) => ({
    distance: (x.usable * x.tank) / (x.depth * x.sprayWidth),
    time: (x.usable * x.tank) / x.flow,
  }),
})

/** Cycle of one load (s): fill, drive there and back, spread. */
export const truckCycle = calculation({
  id: 'truck-cycle',
  title: 'One load of water',
  about:
    'Filling, driving to the track and back, and spraying. Part of the tank stays behind or is spilled, so only the usable share counts.',
  sources: ['fire-shuttle', 'geometry'],
  inputs: {
    tank,
    usable,
    fillFlow,
    flow,
    travel: {
      symbol: 't_d',
      label: 'driving from track to water and back',
      kind: 'minutes',
      range: [0, 7200],
    },
  },
  outputs: {
    fill: {
      symbol: 't_f',
      label: 'to fill the tank',
      kind: 'minutes',
      tex: '\\frac{@usable\\,@tank}{@fillFlow}',
    },
    spread: {
      symbol: 't_s',
      label: 'to spray a load',
      kind: 'minutes',
      tex: '\\frac{@usable\\,@tank}{@flow}',
    },
    time: {
      symbol: 't',
      label: 'from load to load',
      kind: 'minutes',
      tex: '@fill + @travel + @spread',
    },
    water: {
      symbol: 'V',
      label: 'on the track from one load',
      kind: 'waterVolume',
      tex: '@usable\\,@tank',
      round: 'down',
    },
  },
  compute: (x) => {
    const water = x.usable * x.tank
    const [fill, spread] = [water / x.fillFlow, water / x.flow]
    return { fill, spread, time: fill + x.travel + spread, water }
  },
})

const cycle = {
  symbol: 't_1',
  label: 'from load to load',
  kind: 'minutes',
  range: [30, 40000],
} as const
const load = {
  symbol: 'V_1',
  label: 'on the track from one load',
  kind: 'waterVolume',
  range: [0.01, 60],
} as const

/**
 * One round over the whole track at a depth: water (m³), whole loads, time (s) for the trucks at
 * hand.
 */
export const waterRound = calculation({
  id: 'water-round',
  title: 'One round of water over the whole track',
  about:
    'Loads are whole ones, shared among the trucks. The time runs from the first filling to the last drop.',
  sources: ['geometry', 'fire-shuttle'],
  inputs: { area, depth, load, cycle, trucks },
  outputs: {
    water: {
      symbol: 'V',
      label: 'for one round',
      kind: 'waterVolume',
      tex: '@area\\,@depth',
      round: 'up',
    },
    loads: {
      symbol: 'n',
      label: 'loads for one round',
      kind: 'whole',
      tex: '\\left\\lceil \\frac{@water}{@load} \\right\\rceil',
    },
    time: {
      symbol: 't',
      label: 'for one round',
      kind: 'duration',
      tex: '\\left\\lceil \\frac{@loads}{@trucks} \\right\\rceil @cycle',
    },
  },
  compute: (x) => {
    const water = x.area * x.depth
    const loads = wholeUp(water / x.load)
    return { water, loads, time: wholeUp(loads / x.trucks) * x.cycle }
  },
})

/** Water of a race day (m³) and the hours (s) that the supply needs to give it. */
export const raceDaySupply = calculation({
  id: 'race-day-supply',
  title: 'Water for a race day against the supply',
  about:
    'Rounds before the first race and one after every few races, each over the whole track, and how long the fill hose must run for it.',
  sources: ['common-practice', 'geometry'],
  inputs: {
    round: { symbol: 'V_1', label: 'for one round', kind: 'waterVolume', range: [0, 2000] },
    before: {
      symbol: 'r_0',
      label: 'rounds of water before the first race',
      kind: 'count',
      range: [0, 10],
    },
    races: { symbol: 'r', label: 'races on the fullest day', kind: 'count', range: [1, 40] },
    every: {
      symbol: 'k',
      label: 'races between two rounds of water',
      kind: 'count',
      range: [1, 20],
    },
    fillFlow,
  },
  outputs: {
    rounds: {
      symbol: 'n',
      label: 'rounds on a race day',
      kind: 'whole',
      tex: '@before + \\left\\lfloor \\frac{@races}{@every} \\right\\rfloor',
    },
    need: { symbol: 'V', label: 'for a race day', kind: 'waterVolume', tex: '@rounds\\,@round' },
    hours: {
      symbol: 't',
      label: 'of filling for a race day',
      kind: 'hours',
      tex: '\\frac{@need}{@fillFlow}',
    },
  },
  compute: (x) => {
    const rounds = x.before + Math.floor(x.races / x.every + 1e-9)
    const need = rounds * x.round
    if (rounds === 0)
      return {
        rounds,
        need: refuse('no rounds are planned'),
        hours: refuse('no rounds are planned'),
      }
    return { rounds, need, hours: need / x.fillFlow }
  },
})

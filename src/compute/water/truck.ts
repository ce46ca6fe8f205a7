import { calculation, refuse } from '../calculation.ts'
import { wholeUp } from '../whole-up.ts'
import { besideRail } from './beside-rail.ts'
import { fillPoints } from './fleet.ts'

const tank = { symbol: 'T', kind: 'waterVolume', range: [0.05, 60] } as const
const usable = { symbol: 'u', kind: 'share', range: [0.3, 1] } as const
const flow = { symbol: 'q', kind: 'waterFlow', range: [0.00006, 0.1] } as const
const sprayWidth = { symbol: 'W', kind: 'width', range: [0.5, 20] } as const
const fillFlow = { symbol: 'q_f', kind: 'waterFlow', range: [0.0003, 0.13] } as const
const depth = { symbol: 'd', kind: 'waterDepth', range: [0.0001, 0.013] } as const

/**
 * Depth (m) that one pass puts down at the usual speed, q/(v·W), and the speed (m/s) that puts down
 * just what soaks in. Form of the sprayer calibration GPA = 495 gpm/(mph × ft).
 */
export const sprayPass = calculation({
  id: 'spray-pass',
  sources: ['osu-b817', 'geometry'],
  inputs: {
    flow,
    sprayWidth,
    usual: { symbol: 'v_0', kind: 'speed', range: [0.2, 14] },
    wanted: depth,
  },
  outputs: {
    depth: { symbol: 'd_0', kind: 'waterDepth', tex: '\\frac{@flow}{@usual\\,@sprayWidth}' },
    speed: { symbol: 'v', kind: 'speed', tex: '\\frac{@flow}{@wanted\\,@sprayWidth}' },
  },
  compute: (x) => ({
    depth: x.flow / (x.usual * x.sprayWidth),
    speed: x.flow / (x.wanted * x.sprayWidth),
  }),
})

/** How far (m) and how long (s) one tank lasts at the wanted depth: the check of a calibration. */
export const tankRun = calculation({
  id: 'tank-run',
  sources: ['osu-b817', 'geometry'],
  inputs: { tank, usable, depth, sprayWidth, flow },
  outputs: {
    distance: {
      symbol: 'D',
      kind: 'reach',
      tex: '\\frac{@usable\\,@tank}{@depth\\,@sprayWidth}',
      round: 'down',
    },
    time: { symbol: 't', kind: 'minutes', tex: '\\frac{@usable\\,@tank}{@flow}' },
  },
  compute: (x) => ({
    distance: (x.usable * x.tank) / (x.depth * x.sprayWidth),
    time: (x.usable * x.tank) / x.flow,
  }),
})

/** Cycle of one load (s): fill, drive there and back, spread. */
export const truckCycle = calculation({
  id: 'truck-cycle',
  sources: ['fire-shuttle', 'geometry'],
  inputs: {
    tank,
    usable,
    fillFlow,
    flow,
    travel: { symbol: 't_d', kind: 'minutes', range: [0, 7200] },
  },
  outputs: {
    fill: { symbol: 't_f', kind: 'minutes', tex: '\\frac{@usable\\,@tank}{@fillFlow}' },
    spread: { symbol: 't_s', kind: 'minutes', tex: '\\frac{@usable\\,@tank}{@flow}' },
    time: { symbol: 't', kind: 'minutes', tex: '@fill + @travel + @spread' },
    water: { symbol: 'V', kind: 'tankLoad', tex: '@usable\\,@tank', round: 'down' },
  },
  compute: (x) => {
    const water = x.usable * x.tank
    const [fill, spread] = [water / x.fillFlow, water / x.flow]
    return { fill, spread, time: fill + x.travel + spread, water }
  },
})

const load = { symbol: 'V_1', kind: 'waterVolume', range: [0.01, 60] } as const

/**
 * Water of a race day by the plan (m³), and the hours (s) that the supply needs to give it: rounds
 * before the first race, what fits into the breaks, and one round after the last race.
 */
export const raceDaySupply = calculation({
  id: 'race-day-supply',
  sources: ['common-practice', 'geometry'],
  inputs: {
    round: { symbol: 'n_1', kind: 'whole', range: [1, 1000] },
    before: { symbol: 'r_0', kind: 'count', range: [0, 10] },
    after: { symbol: 'r_1', kind: 'count', range: [0, 5] },
    breaks: { symbol: 'b', kind: 'whole', range: [0, 40] },
    lapsInBreak: { symbol: 'k', kind: 'whole', range: [0, 1000] },
    rail: { symbol: 'L_r', kind: 'distance', range: [100, 4000] },
    reach: { symbol: 'D_1', kind: 'reach', range: [1, 1e5] },
    sprayWidth,
    load,
    fillFlow,
    points: fillPoints,
  },
  outputs: {
    rounds: { symbol: 'n', kind: 'whole', tex: '@before + @after' },
    'break-loads': {
      symbol: 'n_b',
      kind: 'whole',
      tex: '\\left\\lceil \\frac{@lapsInBreak\\,(@rail + \\pi\\,@sprayWidth)}{@reach} \\right\\rceil',
    },
    loads: { symbol: 'n_d', kind: 'whole', tex: '@rounds\\,@round + @breaks\\,@break-loads' },
    need: { symbol: 'V', kind: 'waterVolume', tex: '@loads\\,@load', round: 'up' },
    hours: { symbol: 't', kind: 'hours', tex: '\\frac{@need}{@points\\,@fillFlow}' },
  },
  refusals: ['no-rounds'],
  compute: (x) => {
    const rounds = x.before + x.after
    const inBreak = wholeUp((x.lapsInBreak * besideRail(x.rail, x.sprayWidth)) / x.reach)
    const loads = rounds * x.round + x.breaks * inBreak
    if (loads === 0) {
      const none = refuse('no-rounds')
      return { rounds, 'break-loads': inBreak, loads, need: none, hours: none }
    }
    const need = loads * x.load
    return { rounds, 'break-loads': inBreak, loads, need, hours: need / (x.points * x.fillFlow) }
  },
})

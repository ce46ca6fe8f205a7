import { calculation, type InputSpec } from '../calculation.ts'

const spec = (symbol: string, kind: InputSpec['kind'], low: number, high: number): InputSpec => ({
  symbol,
  kind,
  range: [low, high],
})

/** Inputs of a further kind of water truck, by the number of the kind. */
export const furtherTrucks = {
  2: {
    trucks2: spec('m_2', 'count', 1, 60),
    load2: spec('V_2', 'waterVolume', 0.01, 60),
    away2: spec('a_2', 'minutes', 5, 40_000),
  },
  3: {
    trucks3: spec('m_3', 'count', 1, 60),
    load3: spec('V_3', 'waterVolume', 0.01, 60),
    away3: spec('a_3', 'minutes', 5, 40_000),
  },
} as const

const bars = {
  2: { flow2: spec('q_2', 'waterFlow', 0.00006, 0.1), width2: spec('W_2', 'width', 0.5, 20) },
  3: { flow3: spec('q_3', 'waterFlow', 0.00006, 0.1), width3: spec('W_3', 'width', 0.5, 20) },
} as const

export const fillFlow: InputSpec = spec('q_f', 'waterFlow', 0.0003, 0.13)
export const fillPoints: InputSpec = spec('p', 'count', 1, 10)
export const depthOfPass: InputSpec = spec('d', 'waterDepth', 0.0001, 0.013)

const first = {
  trucks: spec('m', 'count', 1, 60),
  load: spec('V_1', 'waterVolume', 0.01, 60),
  cycle: spec('t_1', 'minutes', 30, 40_000),
  speed: spec('v', 'speed', 0.01, 60),
  reach: spec('D_1', 'reach', 1, 1e6),
  fillFlow,
  points: fillPoints,
} as const

/** A kind of truck: how many, load (m³), from load to load (s), driving speed (m/s), reach (m). */
type Kind = {
  readonly trucks: number
  readonly load: number
  readonly cycle: number
  readonly speed: number
  readonly reach: number
}

type Bar = { readonly flow: number; readonly width: number }

/** A further kind, from what its machine is: it waters to the same depth, at a speed of its own. */
const furtherKind = (
  trucks: number,
  load: number,
  away: number,
  bar: Bar,
  x: { readonly fillFlow: number; readonly depth: number },
): Kind => ({
  trucks,
  load,
  cycle: load / x.fillFlow + away,
  speed: bar.flow / (x.depth * bar.width),
  reach: load / (x.depth * bar.width),
})

/** All of them side by side: their rates add, and no more water is carried than the hoses give. */
function together(kinds: readonly Kind[], hoses: number) {
  const sum = (of: (k: Kind) => number): number =>
    kinds.reduce((total, k) => total + k.trucks * of(k), 0)
  const all = sum(() => 1)
  const carried = sum((k) => k.load / k.cycle)
  const rate = Math.min(carried, hoses)
  const mean = carried / sum((k) => 1 / k.cycle)
  return {
    all,
    rate,
    mean,
    turn: (all * mean) / rate,
    pace: sum((k) => k.speed) / all,
    range: sum((k) => k.reach) / all,
  }
}

/** Formulas for the first kind and those after it, whose names end in their number. */
const formulas = (...kinds: readonly ('' | '2' | '3')[]) => {
  const sum = (term: (k: string) => string): string => kinds.map(term).join(' + ')
  const carried = sum((k) => `\\frac{@trucks${k}\\,@load${k}}{@cycle${k}}`)
  const mean = (name: string): string => `\\frac{${sum((k) => `@trucks${k}\\,@${name}${k}`)}}{@all}`
  return {
    all: { symbol: 'M', kind: 'count', tex: sum((k) => `@trucks${k}`) },
    rate: {
      symbol: 'Q',
      kind: 'waterFlow',
      tex: `\\min\\left(${carried},\\; @points\\,@fillFlow\\right)`,
      round: 'down',
    },
    mean: {
      symbol: '\\bar V',
      kind: 'tankLoad',
      round: 'down',
      tex: `\\frac{${carried}}{${sum((k) => `\\frac{@trucks${k}}{@cycle${k}}`)}}`,
    },
    turn: { symbol: '\\bar t', kind: 'minutes', tex: '\\frac{@all\\,@mean}{@rate}' },
    pace: { symbol: '\\bar v', kind: 'speed', tex: mean('speed') },
    range: { symbol: '\\bar D', kind: 'reach', tex: mean('reach'), round: 'down' },
  } as const
}

/** What a further kind of truck needs for a load, how fast it drives and how far a load reaches. */
const ownFormulas = (k: '2' | '3') => {
  const bar = `@depth\\,@width${k}`
  return {
    cycle: {
      symbol: `t_${k}`,
      kind: 'minutes',
      tex: `\\frac{@load${k}}{@fillFlow} + @away${k}`,
    },
    speed: { symbol: `v_${k}`, kind: 'speed', tex: `\\frac{@flow${k}}{${bar}}` },
    reach: { symbol: `D_${k}`, kind: 'reach', tex: `\\frac{@load${k}}{${bar}}`, round: 'down' },
  } as const
}

const [second, third] = [ownFormulas('2'), ownFormulas('3')]
const ofSecond = { cycle2: second.cycle, speed2: second.speed, reach2: second.reach } as const
const ofThird = { cycle3: third.cycle, speed3: third.speed, reach3: third.reach } as const
const sources = ['fire-shuttle', 'geometry'] as const

/**
 * All water trucks side by side where they are alike: how many, water carried to the track (m³/s),
 * load, time from load to load of each with the wait at the hose (s), speed and reach.
 */
export const fleet = calculation({
  id: 'water-fleet',
  sources,
  inputs: first,
  outputs: formulas(''),
  compute: (x) => together([x], x.points * x.fillFlow),
})

/** The same with a second kind, whose load, speed and reach are its own. */
export const fleetOfTwo = calculation({
  id: 'water-fleet-of-two',
  sources,
  inputs: { ...first, depth: depthOfPass, ...furtherTrucks[2], ...bars[2] },
  outputs: { ...ofSecond, ...formulas('', '2') },
  compute: (x) => {
    const two = furtherKind(x.trucks2, x.load2, x.away2, { flow: x.flow2, width: x.width2 }, x)
    const own = { cycle2: two.cycle, speed2: two.speed, reach2: two.reach }
    return { ...own, ...together([x, two], x.points * x.fillFlow) }
  },
})

/** The same with all others as a third kind. */
export const fleetOfThree = calculation({
  id: 'water-fleet-of-three',
  sources,
  inputs: {
    ...first,
    depth: depthOfPass,
    ...furtherTrucks[2],
    ...furtherTrucks[3],
    ...bars[2],
    ...bars[3],
  },
  outputs: { ...ofSecond, ...ofThird, ...formulas('', '2', '3') },
  compute: (x) => {
    const two = furtherKind(x.trucks2, x.load2, x.away2, { flow: x.flow2, width: x.width2 }, x)
    const three = furtherKind(x.trucks3, x.load3, x.away3, { flow: x.flow3, width: x.width3 }, x)
    return {
      ...{ cycle2: two.cycle, speed2: two.speed, reach2: two.reach },
      ...{ cycle3: three.cycle, speed3: three.speed, reach3: three.reach },
      ...together([x, two, three], x.points * x.fillFlow),
    }
  },
})

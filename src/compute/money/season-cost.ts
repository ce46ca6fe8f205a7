import { secondsPerDay } from '../../model/day.ts'
import { calculation, type InputSpec, type OutputSpec, refuse } from '../calculation.ts'

const money = (symbol: string): InputSpec => ({ symbol, kind: 'money', range: [0, 1e7] })

/** Taking off what is too deep (money): blading it to the edge, loading it, hauling it away. */
export const takeOffCost = calculation({
  id: 'take-off-cost',
  sources: ['common-practice'],
  inputs: { blading: money('C_1'), loading: money('C_2'), hauling: money('C_3') },
  outputs: {
    cost: { symbol: 'C', kind: 'money', tex: '@blading + @loading + @hauling', round: 'up' },
  },
  compute: (x) => ({ cost: x.blading + x.loading + x.hauling }),
})

/** What material costs (money), by the mass that is on the scale. */
export const materialCost = calculation({
  id: 'material-cost',
  sources: ['common-practice'],
  inputs: {
    order: { symbol: 'M', kind: 'mass', range: [0, 1e8] },
    price: { symbol: 'p', kind: 'massPrice', range: [0, 1] },
  },
  outputs: { cost: { symbol: 'C', kind: 'money', tex: '@order\\,@price', round: 'up' } },
  compute: (x) => ({ cost: x.order * x.price }),
})

/** What evening out a cushion costs (money): a small crew with one machine, where too few readings are within tolerance. */
export const evenCost = calculation({
  id: 'even-cost',
  sources: ['common-practice'],
  inputs: {
    time: { symbol: 't', kind: 'hours', range: [0, 1e7] },
    people: { symbol: 'p', kind: 'count', range: [1, 200] },
    wage: { symbol: 'c_p', kind: 'hourlyRate', range: [0, 1] },
    tax: { symbol: 'u', kind: 'fineShare', range: [0, 1] },
    rate: { symbol: 'c_m', kind: 'hourlyRate', range: [0, 1] },
    fuelRate: { symbol: 'f', kind: 'fuelRate', range: [0, 1e-4] },
    fuelPrice: { symbol: 'c_f', kind: 'volumePrice', range: [0, 20_000] },
    share: { symbol: 's', kind: 'share', range: [0, 1] },
    enough: { symbol: 's_0', kind: 'share', range: [0, 1] },
  },
  outputs: {
    labor: {
      symbol: 'C_p',
      kind: 'money',
      tex: '@people\\,@time\\,@wage\\,(1 + @tax)',
      round: 'up',
    },
    machine: {
      symbol: 'C_m',
      kind: 'money',
      tex: '@time\\,(@rate + @fuelRate\\,@fuelPrice)',
      round: 'up',
    },
    cost: { symbol: 'C', kind: 'money', tex: '@labor + @machine', round: 'up' },
  },
  refusals: ['even-enough'],
  compute: (x) => {
    if (x.share >= x.enough) {
      const none = refuse('even-enough')
      return { labor: none, machine: none, cost: none }
    }
    const labor = x.people * x.time * x.wage * (1 + x.tax)
    const machine = x.time * (x.rate + x.fuelRate * x.fuelPrice)
    return { labor, machine, cost: labor + machine }
  },
})

const seasonInputs = {
  fair: money('C_n'),
  before: { symbol: 'n', kind: 'days', range: [0, 366 * secondsPerDay] },
  harrow: money('C_2'),
  round: money('C_3'),
  water: { symbol: 'V', kind: 'waterVolume', range: [0, 1e5] },
  waterPrice: { symbol: 'c_w', kind: 'volumePrice', range: [0, 300] },
  shaping: money('C_4'),
  takeOff: money('C_5'),
  material: money('C_6'),
  grit: money('C_7'),
  moving: money('C_8'),
} as const satisfies Readonly<Record<string, InputSpec>>

const seasonOutputs = {
  daily: {
    symbol: 'C_d',
    kind: 'money',
    tex: '@harrow + @round + @water\\,@waterPrice',
    round: 'up',
  },
  ready: {
    symbol: 'C_r',
    kind: 'money',
    tex: '\\frac{@before}{1\\,\\text{d}}\\,@daily + @shaping',
    round: 'up',
  },
  cures: {
    symbol: 'C_c',
    kind: 'money',
    tex: '@takeOff + @material + @grit + @moving',
    round: 'up',
  },
  total: { symbol: 'C', kind: 'money', tex: '@fair + @ready + @cures', round: 'up' },
} as const satisfies Readonly<Record<string, OutputSpec>>

function sums(x: Readonly<Record<keyof typeof seasonInputs, number>>) {
  const daily = x.harrow + x.round + x.water * x.waterPrice
  const ready = (x.before / secondsPerDay) * daily + x.shaping
  const cures = x.takeOff + x.material + x.grit + x.moving
  const total = x.fair + ready + cures
  // Nothing is not a price: what nobody has asked for is not printed as free.
  const priced = (sum: number) => (sum > 0 ? sum : refuse('no-price'))
  return {
    all: total,
    printed: {
      daily: priced(daily),
      ready: priced(ready),
      cures: priced(cures),
      total: priced(total),
    },
  }
}

/**
 * What a season costs (money): the race days, getting ready for them, and every cure that has a
 * price, against what is set aside, be it nothing.
 */
export const seasonCost = calculation({
  id: 'season-cost',
  sources: ['common-practice'],
  inputs: { ...seasonInputs, budget: money('B') },
  outputs: {
    ...seasonOutputs,
    short: { symbol: "C'", kind: 'money', tex: '@total - @budget', round: 'up' },
  },
  refusals: ['no-price', 'budget-enough'],
  compute: (x) => {
    const { all, printed } = sums(x)
    return { ...printed, short: all > x.budget ? all - x.budget : refuse('budget-enough') }
  },
})

/** The same where nobody has said what is set aside. */
export const seasonCostUnset = calculation({
  id: 'season-cost-unset',
  sources: ['common-practice'],
  inputs: seasonInputs,
  outputs: {
    ...seasonOutputs,
    short: { symbol: "C'", kind: 'money', tex: '@total - B', round: 'up' },
  },
  refusals: ['no-price', 'no-budget'],
  compute: (x) => ({ ...sums(x).printed, short: refuse('no-budget') }),
})

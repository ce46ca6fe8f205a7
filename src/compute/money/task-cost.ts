import { calculation, type InputSpec } from '../calculation.ts'

const price = (symbol: string): InputSpec => ({
  symbol,
  kind: 'hourlyRate',
  range: [0, 1],
})

/**
 * What one run of a task costs (money): machines, fuel (m³ and money) and drivers, for the hours
 * that it takes.
 */
export const taskCost = calculation({
  id: 'task-cost',
  sources: ['isu-a3-29', 'common-practice'],
  inputs: {
    time: { symbol: 't', kind: 'duration', range: [0, 1e6] },
    machines: { symbol: 'm', kind: 'count', range: [1, 20] },
    rate: price('c_m'),
    fuelRate: { symbol: 'f', kind: 'fuelRate', range: [0, 1e-4] },
    fuelPrice: { symbol: 'c_f', kind: 'volumePrice', range: [0, 20_000] },
    labor: price('c_p'),
  },
  outputs: {
    fuel: { symbol: 'V', kind: 'fuelVolume', tex: '@machines\\,@time\\,@fuelRate' },
    cost: {
      symbol: 'C',
      kind: 'money',
      tex: '@machines\\,@time\\,(@rate + @labor) + @fuel\\,@fuelPrice',
      round: 'up',
    },
  },
  compute: (x) => {
    const fuel = x.machines * x.time * x.fuelRate
    return { fuel, cost: x.machines * x.time * (x.rate + x.labor) + fuel * x.fuelPrice }
  },
})

const money = (symbol: string): InputSpec => ({
  symbol,
  kind: 'money',
  range: [0, 1e7],
})
const fuel = (symbol: string): InputSpec => ({
  symbol,
  kind: 'fuelVolume',
  range: [0, 1000],
})
const count = (symbol: string): InputSpec => ({
  symbol,
  kind: 'count',
  range: [0, 1000],
})

/**
 * What a race day and the whole fair cost (money): pulling back, harrowing, rounds of water with
 * the price of the water.
 */
export const raceDayCost = calculation({
  id: 'race-day-cost',
  sources: ['common-practice'],
  inputs: {
    pullBack: money('C_1'),
    harrow: money('C_2'),
    harrowings: count('n_2'),
    round: money('C_3'),
    rounds: count('n_3'),
    water: { symbol: 'V', kind: 'waterVolume', range: [0, 1e5] },
    waterPrice: { symbol: 'c_w', kind: 'volumePrice', range: [0, 300] },
    days: count('n'),
    pullFuel: fuel('V_1'),
    harrowFuel: fuel('V_2'),
    roundFuel: fuel('V_3'),
    fuelPrice: { symbol: 'c_f', kind: 'volumePrice', range: [0, 20_000] },
  },
  outputs: {
    day: {
      symbol: 'C',
      kind: 'money',
      tex: '@pullBack + @harrowings\\,@harrow + @rounds\\,@round + @water\\,@waterPrice',
      round: 'up',
    },
    fair: { symbol: 'C_n', kind: 'money', tex: '@days\\,@day', round: 'up' },
    water: { symbol: 'C_w', kind: 'money', tex: '@days\\,@water\\,@waterPrice', round: 'up' },
    fuel: {
      symbol: 'V_f',
      kind: 'fuelVolume',
      tex: '@days\\,(@pullFuel + @harrowings\\,@harrowFuel + @rounds\\,@roundFuel)',
    },
    'fuel-price': { symbol: 'C_f', kind: 'money', tex: 'V_f\\,@fuelPrice', round: 'up' },
  },
  compute: (x) => {
    const day = x.pullBack + x.harrowings * x.harrow + x.rounds * x.round + x.water * x.waterPrice
    const burnt = x.days * (x.pullFuel + x.harrowings * x.harrowFuel + x.rounds * x.roundFuel)
    return {
      day,
      fair: x.days * day,
      water: x.days * x.water * x.waterPrice,
      fuel: burnt,
      'fuel-price': burnt * x.fuelPrice,
    }
  },
})

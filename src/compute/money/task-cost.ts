import { calculation, type InputSpec } from '../calculation.ts'

const price = (symbol: string): InputSpec => ({
  symbol,
  kind: 'hourlyRate',
  range: [0, 1],
})

/**
 * What one run of a task costs (money): machines, fuel (m³ and money) and drivers with the tax on
 * their wages, for the hours that it takes.
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
    tax: { symbol: 'u', kind: 'fineShare', range: [0, 1] },
  },
  outputs: {
    fuel: { symbol: 'V', kind: 'fuelVolume', tex: '@machines\\,@time\\,@fuelRate' },
    machine: {
      symbol: 'C_m',
      kind: 'money',
      tex: '@machines\\,@time\\,@rate + @fuel\\,@fuelPrice',
      round: 'up',
    },
    cost: {
      symbol: 'C',
      kind: 'money',
      tex: '@machine + @machines\\,@time\\,@labor\\,(1 + @tax)',
      round: 'up',
    },
  },
  compute: (x) => {
    const fuel = x.machines * x.time * x.fuelRate
    const machine = x.machines * x.time * x.rate + fuel * x.fuelPrice
    return { fuel, machine, cost: machine + x.machines * x.time * x.labor * (1 + x.tax) }
  },
})

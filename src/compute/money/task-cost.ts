import { calculation, type InputSpec } from '../calculation.ts'

const price = (symbol: string, label: string): InputSpec => ({
  symbol,
  label,
  kind: 'hourlyRate',
  range: [0, 1],
})

/**
 * What one run of a task costs (money): machines, fuel (m³ and money) and drivers, for the hours
 * that it takes.
 */
export const taskCost = calculation({
  id: 'task-cost',
  title: 'What a task costs',
  about:
    'Machines at their price per hour, the fuel they burn, and one paid driver for each. Where drivers are volunteers the hours are hours all the same; put their price at nothing in the facility file if the board counts them so.',
  sources: ['isu-a3-29', 'common-practice'],
  inputs: {
    time: { symbol: 't', label: 'time that the task takes', kind: 'duration', range: [0, 1e6] },
    machines: { symbol: 'm', label: 'machines at work', kind: 'count', range: [1, 20] },
    rate: price('c_m', 'cost per hour'),
    fuelRate: { symbol: 'f', label: 'fuel per hour', kind: 'fuelRate', range: [0, 1e-4] },
    fuelPrice: { symbol: 'c_f', label: 'price of fuel', kind: 'volumePrice', range: [0, 20_000] },
    labor: price('c_p', 'price of an hour of paid work'),
  },
  outputs: {
    fuel: {
      symbol: 'V',
      label: 'of fuel',
      kind: 'fuelVolume',
      tex: '@machines\\,@time\\,@fuelRate',
    },
    cost: {
      symbol: 'C',
      label: 'for machines, fuel and drivers',
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

const money = (symbol: string, label: string): InputSpec => ({
  symbol,
  label,
  kind: 'money',
  range: [0, 1e7],
})
const fuel = (symbol: string, label: string): InputSpec => ({
  symbol,
  label,
  kind: 'fuelVolume',
  range: [0, 1000],
})
const count = (symbol: string, label: string): InputSpec => ({
  symbol,
  label,
  kind: 'count',
  range: [0, 1000],
})

/**
 * What a race day and the whole fair cost (money): pulling back, harrowing, rounds of water with
 * the price of the water.
 */
export const raceDayCost = calculation({
  id: 'race-day-cost',
  title: 'What a race day costs',
  about:
    'The daily round: the strip at the rail pulled back once, the whole width harrowed before and after the card, and the rounds of water. Repairs, rain and material come on top.',
  sources: ['common-practice'],
  inputs: {
    pullBack: money('C_1', 'pulling back the strip next to the rail'),
    harrow: money('C_2', 'harrowing the whole width'),
    harrowings: count('n_2', 'harrowings of the whole width in a day'),
    round: money('C_3', 'one round of water'),
    rounds: count('n_3', 'rounds on a race day'),
    water: { symbol: 'V', label: 'water for a race day', kind: 'waterVolume', range: [0, 1e5] },
    waterPrice: { symbol: 'c_w', label: 'price of water', kind: 'volumePrice', range: [0, 300] },
    days: count('n', 'race days'),
    pullFuel: fuel('V_1', 'fuel for pulling back'),
    harrowFuel: fuel('V_2', 'fuel for harrowing the whole width'),
    roundFuel: fuel('V_3', 'fuel for one round of water'),
    fuelPrice: { symbol: 'c_f', label: 'price of fuel', kind: 'volumePrice', range: [0, 20_000] },
  },
  outputs: {
    day: {
      symbol: 'C',
      label: 'for a race day',
      kind: 'money',
      tex: '@pullBack + @harrowings\\,@harrow + @rounds\\,@round + @water\\,@waterPrice',
      round: 'up',
    },
    fair: {
      symbol: 'C_n',
      label: 'for all race days',
      kind: 'money',
      tex: '@days\\,@day',
      round: 'up',
    },
    water: {
      symbol: 'C_w',
      label: 'of it for water',
      kind: 'money',
      tex: '@days\\,@water\\,@waterPrice',
      round: 'up',
    },
    fuel: {
      symbol: 'V_f',
      label: 'of fuel for all race days',
      kind: 'fuelVolume',
      tex: '@days\\,(@pullFuel + @harrowings\\,@harrowFuel + @rounds\\,@roundFuel)',
    },
    'fuel-price': {
      symbol: 'C_f',
      label: 'of it for fuel',
      kind: 'money',
      tex: 'V_f\\,@fuelPrice',
      round: 'up',
    },
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

import { calculation, type InputSpec, refuse } from '../calculation.ts'

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
 * What a race day and the whole fair cost (money): everybody for all the hours that the rota has
 * them there, machines with their fuel for pulling back, harrowing, rounds of water and the laps
 * between races and in breaks, and the water.
 */
export const raceDayCost = calculation({
  id: 'race-day-cost',
  sources: ['common-practice'],
  inputs: {
    crew: { symbol: 'T_c', kind: 'hours', range: [0, 1e8] },
    wage: { symbol: 'c_p', kind: 'hourlyRate', range: [0, 1] },
    tax: { symbol: 'u', kind: 'fineShare', range: [0, 1] },
    pullBack: money('C_1'),
    harrow: money('C_2'),
    harrowings: count('n_2'),
    harrowLaps: { symbol: 'n_w', kind: 'whole', range: [1, 1000] },
    lapsBetween: { symbol: 'n_b', kind: 'whole', range: [0, 1000] },
    lapsInBreak: { symbol: 'n_p', kind: 'whole', range: [0, 1000] },
    breaks: { symbol: 'b', kind: 'whole', range: [0, 40] },
    races: count('r'),
    round: money('C_3'),
    roundLoads: { symbol: 'n_1', kind: 'whole', range: [1, 1000] },
    loads: { symbol: 'n_d', kind: 'whole', range: [0, 1000] },
    water: { symbol: 'V', kind: 'waterVolume', range: [0, 1e5] },
    waterPrice: { symbol: 'c_w', kind: 'volumePrice', range: [0, 300] },
    days: count('n'),
    pullFuel: fuel('V_1'),
    harrowFuel: fuel('V_2'),
    roundFuel: fuel('V_3'),
    fuelPrice: { symbol: 'c_f', kind: 'volumePrice', range: [0, 20_000] },
  },
  outputs: {
    hours: { symbol: 'T', kind: 'hours', tex: '@crew' },
    labor: { symbol: 'C_p', kind: 'money', tex: '@hours\\,@wage\\,(1 + @tax)', round: 'up' },
    'whole-harrowings': {
      symbol: "n_2'",
      kind: 'tenths',
      tex: '@harrowings + \\frac{(@races - 1 - @breaks)\\,@lapsBetween + @breaks\\,@lapsInBreak}{@harrowLaps}',
    },
    'whole-rounds': { symbol: 'n_3', kind: 'tenths', tex: '\\frac{@loads}{@roundLoads}' },
    machines: {
      symbol: 'C_m',
      kind: 'money',
      tex: '@pullBack + @whole-harrowings\\,@harrow + @whole-rounds\\,@round',
      round: 'up',
    },
    'day-water': { symbol: 'C_v', kind: 'money', tex: '@water\\,@waterPrice', round: 'up' },
    day: { symbol: 'C', kind: 'money', tex: '@labor + @machines + @day-water', round: 'up' },
    fair: { symbol: 'C_n', kind: 'money', tex: '@days\\,@day', round: 'up' },
    water: { symbol: 'C_w', kind: 'money', tex: '@days\\,@day-water', round: 'up' },
    fuel: {
      symbol: 'V_f',
      kind: 'fuelVolume',
      tex: '@days\\,(@pullFuel + @whole-harrowings\\,@harrowFuel + @whole-rounds\\,@roundFuel)',
    },
    'fuel-price': { symbol: 'C_f', kind: 'money', tex: '@fuel\\,@fuelPrice', round: 'up' },
  },
  refusals: ['no-price', 'no-fuel', 'no-water-counted'],
  compute: (x) => {
    const hours = x.crew
    const labor = hours * x.wage * (1 + x.tax)
    const laps = (x.races - 1 - x.breaks) * x.lapsBetween + x.breaks * x.lapsInBreak
    const harrowings = x.harrowings + laps / x.harrowLaps
    const rounds = x.loads / x.roundLoads
    const machines = x.pullBack + harrowings * x.harrow + rounds * x.round
    const water = x.water * x.waterPrice
    const day = labor + machines + water
    const fuel = x.days * (x.pullFuel + harrowings * x.harrowFuel + rounds * x.roundFuel)
    // Nothing is not a price: what nobody has asked for is not printed as free. Water that is
    // counted has a price, which may be nothing: an own pond.
    const priced = (sum: number) => (sum > 0 ? sum : refuse('no-price'))
    const ofWater = (sum: number) => (x.water > 0 ? sum : refuse('no-water-counted'))
    return {
      hours,
      labor: priced(labor),
      'whole-harrowings': harrowings,
      'whole-rounds': rounds,
      machines: priced(machines),
      'day-water': ofWater(water),
      day: priced(day),
      fair: priced(x.days * day),
      water: ofWater(x.days * water),
      fuel: fuel > 0 ? fuel : refuse('no-fuel'),
      'fuel-price': priced(fuel * x.fuelPrice),
    }
  },
})

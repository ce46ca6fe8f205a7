import { calculation, type InputSpec } from '../calculation.ts'
import {
  capitalRecovery,
  housingCost,
  recoveryFactor,
  repairShare,
  salvageValue,
} from './machine-cost.ts'

const money = (symbol: string): InputSpec => ({ symbol, kind: 'money', range: [50, 2e6] })
const share = (symbol: string, high: number): InputSpec => ({
  symbol,
  kind: 'fineShare',
  range: [0.001, high],
})

/**
 * What an hour of a machine of one's own costs (money an hour), without fuel and driver: loss of
 * value and interest, keeping it, and repairs, spread over the hours that it works in a year.
 */
export const machineHour = calculation({
  id: 'machine-cost',
  sources: ['isu-a3-29', 'isu-pm-710'],
  inputs: {
    price: money('P'),
    left: share('s', 0.95),
    interest: share('i', 0.3),
    years: { symbol: 'n', kind: 'count', range: [1, 40] },
    hours: { symbol: 'h', kind: 'hours', range: [3600, 3600 * 3000] },
    keeping: share('k', 0.2),
    rf1: { symbol: 'r_1', kind: 'ratio', range: [0.001, 1] },
    rf2: { symbol: 'r_2', kind: 'ratio', range: [1, 3] },
  },
  outputs: {
    salvage: { symbol: 'S', kind: 'money', tex: '@left\\,@price' },
    recovery: {
      symbol: 'c',
      kind: 'fineShare',
      tex: '\\frac{@interest}{1 - (1 + @interest)^{-@years}}',
    },
    capital: {
      symbol: 'C_1',
      kind: 'money',
      tex: '(@price - @salvage)\\,@recovery + @salvage\\,@interest',
    },
    keep: { symbol: 'C_2', kind: 'money', tex: '@keeping\\,\\frac{@price + @salvage}{2}' },
    repairs: {
      symbol: 'C_3',
      kind: 'money',
      tex: '\\frac{@price\\,@rf1}{@years}\\left(\\frac{@years\\,@hours}{1000\\,\\text{h}}\\right)^{@rf2}',
    },
    hour: {
      symbol: 'c_m',
      kind: 'hourlyRate',
      tex: '\\frac{@capital + @keep + @repairs}{@hours}',
      round: 'up',
    },
  },
  compute: (x) => {
    const salvage = salvageValue(x.price, x.left)
    const capital = capitalRecovery(x.price, salvage, x.interest, x.years)
    const keep = housingCost(x.price, salvage, x.keeping)
    const repairs = (x.price * repairShare(x.years * x.hours, x.rf1, x.rf2)) / x.years
    return {
      salvage,
      recovery: recoveryFactor(x.interest, x.years),
      capital,
      keep,
      repairs,
      hour: (capital + keep + repairs) / x.hours,
    }
  },
})

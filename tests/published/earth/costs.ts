import {
  costOf,
  jobTime,
  markUp,
  sumOfCosts,
  unitCost,
} from '../../../src/compute/money/job-cost.ts'
import {
  capitalRecovery,
  depreciationByUse,
  housingCost,
  recoveryFactor,
  repairShare,
  salvageValue,
} from '../../../src/compute/money/machine-cost.ts'
import { type Runner, si } from './case.ts'

export const costs: Readonly<Record<string, Runner>> = {
  capital_recovery: (x) => ({
    crf: recoveryFactor(x.n('rate'), x.n('years')),
    annual: capitalRecovery(x.n('price'), x.n('salvage'), x.n('rate'), x.n('years')),
  }),
  tih: (x) => ({ annual: housingCost(x.n('price'), x.n('salvage'), x.n('rate')) }),
  sum_costs: (x) => ({ total: sumOfCosts(x.list('items')) }),
  salvage_value: (x) => ({ salvage: salvageValue(x.n('list_price'), x.n('fraction')) }),
  unit_cost: (x) => ({ per_unit: unitCost(x.n('hourly'), x.n('rate')) }),
  unit_cost_crew: (x) => {
    const hourly = sumOfCosts([x.n('equipment'), x.n('operator')])
    return { hourly, per_unit: unitCost(hourly, x.n('rate')) }
  },
  job_hours_cost: (x) => {
    const hours = jobTime(x.n('volume'), x.n('rate'))
    return { hours, cost: costOf(hours, x.n('hourly_cost')) }
  },
  job_cost_from_hours: (x) => {
    const cost = costOf(x.n('hours'), x.n('hourly_cost'))
    return { cost, unit_cost: cost / x.n('volume') }
  },
  markup: (x) => {
    const { overhead, contract, administration, total } = markUp(
      x.n('subtotal'),
      x.n('overhead_pct') / 100,
      x.n('admin_pct') / 100,
    )
    return { overhead, contract, admin: administration, total }
  },
  units_depreciation: (x) => {
    const { each, lost, left } = depreciationByUse(
      x.n('cost'),
      x.n('salvage'),
      x.n('units'),
      x.n('period'),
    )
    return { rate: each, period: lost, book: left }
  },
  seed_cost: (x) => ({ cost: costOf(x.n('acres') * x.n('factor'), x.n('rate')) }),
  repair_fraction: (x) => ({
    fraction: x.list('hours').map((hours) => repairShare(si(hours, 'h'), x.n('rf1'), x.n('rf2'))),
  }),
}

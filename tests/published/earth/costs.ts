import {
  capitalRecovery,
  housingCost,
  recoveryFactor,
  repairShare,
  salvageValue,
} from '../../../src/compute/money/machine-cost.ts'
import { type Runner, si } from '../case.ts'

export const costs: Readonly<Record<string, Runner>> = {
  capital_recovery: (x) => ({
    crf: recoveryFactor(x.n('rate'), x.n('years')),
    annual: capitalRecovery(x.n('price'), x.n('salvage'), x.n('rate'), x.n('years')),
  }),
  tih: (x) => ({ annual: housingCost(x.n('price'), x.n('salvage'), x.n('rate')) }),
  salvage_value: (x) => ({ salvage: salvageValue(x.n('list_price'), x.n('fraction')) }),
  repair_fraction: (x) => ({
    fraction: x.list('hours').map((hours) => repairShare(si(hours, 'h'), x.n('rf1'), x.n('rf2'))),
  }),
}

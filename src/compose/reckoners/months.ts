import type { ManualReckoner } from '../../model/manual/reckoner.ts'
import type { ComposeContext } from '../context.ts'
import { monthName } from '../dates.ts'
import { monthEngines } from '../facility/month-engines.ts'

const columns = ['air.rate', 'demand.water', 'demand.loads', 'dry.hours'] as const

/**
 * Water by month: the fair month's figures with the climate of each month that the facility gives.
 */
export function composeMonths(context: ComposeContext): ManualReckoner | undefined {
  const { words } = context.library
  const main = context.engine.figure('demand.water')
  const rows = monthEngines(context).map(({ month, own, engine }) => ({
    head: monthName(month, context),
    own,
    cells: columns.map((id) => engine.text(id) ?? '–'),
  }))
  if (!main?.value.ok || rows.length < 2) return undefined
  return {
    id: 'months',
    title: words.months.title,
    about: words.months.about,
    rowHead: words.months.month,
    columnHeads: [words.months.air, words.months.water, words.months.loads, words.months.dry],
    columnsHead: undefined,
    rows,
    worksheet: { number: main.worksheet, id: 'demand' },
    estimate: main.estimate,
  }
}

import { latestDay } from '../../compute/survey/latest-day.ts'
import type { CushionMap } from '../../model/manual/survey.ts'
import { type ComposeContext, printed } from '../context.ts'
import { stretchesOf } from './depth-survey.ts'

/** The latest depth survey as its map needs it. */
export function composeCushionMap(context: ComposeContext): CushionMap | undefined {
  const day = latestDay(context.facility.imported.surveys, 'cushion-depth')
  const wanted = context.engine.siOfAll({
    target: 'cushion.depth.target',
    tolerance: 'cushion.depth.tolerance',
  })
  const cells = stretchesOf(context)
    .flatMap((s) => s.cells)
    .map(({ from, to, inner, outer, value }) => ({
      from,
      to,
      inner,
      outer,
      value,
      text: printed(value, 'fineDepth', context),
    }))
  return day && wanted && cells.length > 0 ? { date: day.date, ...wanted, cells } : undefined
}

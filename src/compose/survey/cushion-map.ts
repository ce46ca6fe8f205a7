import { latestDay } from '../../compute/survey/latest-day.ts'
import type { CushionMap, MapMove } from '../../model/manual/survey.ts'
import { type ComposeContext, printed } from '../context.ts'
import { dateWithYear } from '../dates.ts'
import { movesOf, stretchesOf } from './depth-survey.ts'

/** Depths at which each class of the map begins. */
const limitsOf = (target: number, tolerance: number, context: ComposeContext) => {
  const at = (tolerances: number): string =>
    printed(Math.max(0, target + tolerances * tolerance), 'fineDepth', context)
  return { farTooDeep: at(2), tooDeep: at(1), tooThin: at(-1), farTooThin: at(-2) }
}

/** What goes from stretch to stretch, and what is left for the stockpile or comes from it. */
function balanceOf(context: ComposeContext): Pick<CushionMap, 'moves' | 'spare' | 'missing'> {
  const all = movesOf(context)
  const name = (station: number): string => printed(station, 'reach', context)
  const sum = (amounts: readonly number[]): string | undefined =>
    amounts.length === 0
      ? undefined
      : printed(
          amounts.reduce((a, b) => a + b, 0),
          'mass',
          context,
        )
  return {
    moves: all.flatMap(({ from, to, amount }): MapMove[] =>
      from === undefined || to === undefined
        ? []
        : [
            {
              from,
              to,
              names: { from: name(from), to: name(to) },
              mass: printed(amount, 'mass', context),
            },
          ],
    ),
    spare: sum(all.filter((m) => m.to === undefined).map((m) => m.amount)),
    missing: sum(all.filter((m) => m.from === undefined).map((m) => m.amount)),
  }
}

/** The latest depth survey as its map needs it. */
export function composeCushionMap(context: ComposeContext): CushionMap | undefined {
  const day = latestDay(context.facility.imported.surveys, 'cushion-depth')
  const wanted = context.engine.siOfAll({
    target: 'cushion.depth.target',
    tolerance: 'cushion.depth.tolerance',
  })
  const stretches = stretchesOf(context)
  if (!day || !wanted || stretches.length === 0) return undefined
  return {
    day: dateWithYear(day.date, context),
    ...wanted,
    limits: limitsOf(wanted.target, wanted.tolerance, context),
    stations: stretches.map(({ station }) => ({
      at: station,
      text: printed(station, 'reach', context),
    })),
    cells: stretches.flatMap(({ station, cells }) =>
      cells.map(({ from, to, inner, outer, value }) => ({
        station,
        from,
        to,
        inner,
        outer,
        value,
        text: printed(value, 'fineDepth', context),
      })),
    ),
    ...balanceOf(context),
  }
}

import { asWeighed } from '../../compute/cushion/as-weighed.ts'
import { latestDay } from '../../compute/survey/latest-day.ts'
import { wholeUp } from '../../compute/whole-up.ts'
import type { CushionMap, MapAmount, MapMove } from '../../model/manual/survey.ts'
import { type ComposeContext, printed } from '../context.ts'
import { dateWithYear } from '../dates.ts'
import { movesOf, stretchesOf } from './depth-survey.ts'

/** Depths at which each class of the map begins. */
const limitsOf = (target: number, tolerance: number, context: ComposeContext) => {
  const at = (tolerances: number): string =>
    printed(Math.max(0, target + tolerances * tolerance), 'fineDepth', context)
  return { farTooDeep: at(2), tooDeep: at(1), tooThin: at(-1), farTooThin: at(-2) }
}

/** What carries material, by whose loads it is counted: as procedures count what they order or take off. */
const carriers = {
  here: { load: ['gear.haul.bed', 'delivery.load'], moisture: 'cushion.moisture.target' },
  quarry: { load: ['delivery.load'], moisture: 'delivery.moisture' },
} as const

/** A dry mass as printed, and how many truckloads that is with the water that it carries. */
function amountOf(
  mass: number,
  context: ComposeContext,
  by: keyof typeof carriers = 'here',
): MapAmount {
  const { engine } = context
  const { load: loads, moisture } = carriers[by]
  const load = loads.map((name) => engine.si(name)).find((si) => si !== undefined)
  const moist = asWeighed(mass, engine.si(moisture) ?? 0)
  return {
    mass: printed(mass, 'mass', context),
    loads: load === undefined ? undefined : wholeUp(moist / load),
  }
}

/** What goes from stretch to stretch, and what is left for the stockpile or comes from it. */
function balanceOf(context: ComposeContext): Pick<CushionMap, 'moves' | 'spare' | 'missing'> {
  const all = movesOf(context)
  const name = (station: number): string => printed(station, 'reach', context)
  // The whole track is weighed, as where the procedures say what to take off or to order.
  const net = stretchesOf(context).reduce((sum, s) => sum + s.over - s.short, 0)
  const toPile = all.some((m) => m.to === undefined)
  const fromPile = all.some((m) => m.from === undefined)
  return {
    moves: all.flatMap(({ from, to, amount }): MapMove[] =>
      from === undefined || to === undefined
        ? []
        : [
            {
              from,
              to,
              names: { from: name(from), to: name(to) },
              ...amountOf(amount, context),
            },
          ],
    ),
    spare: toPile && net > 0 ? amountOf(net, context) : undefined,
    missing: fromPile && net < 0 ? amountOf(-net, context, 'quarry') : undefined,
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

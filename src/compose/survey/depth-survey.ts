import { depthStretches, type Stretch } from '../../compute/survey/depth-stretches.ts'
import { latestDay } from '../../compute/survey/latest-day.ts'
import { type Move, materialMoves } from '../../compute/survey/material-moves.ts'
import type { TableRows } from '../../model/manual/schedule.ts'
import { type ComposeContext, printed } from '../context.ts'
import { dateWithYear } from '../dates.ts'
import { surveyedOval } from './surveyed-oval.ts'

const mean = (values: readonly number[]): number =>
  values.reduce((a, b) => a + b, 0) / values.length

/** One row for each day on which the depth was surveyed, the oldest first. */
export function surveyDayRows(context: ComposeContext): TableRows {
  const { engine, facility } = context
  const target = engine.si('cushion.depth.target') ?? 0
  const tolerance = engine.si('cushion.depth.tolerance') ?? 0
  return facility.imported.surveys
    .filter((s) => s.of === 'cushion-depth')
    .flatMap((s) => s.days)
    .toSorted((a, b) => a.date.localeCompare(b.date))
    .map(({ date, readings }) => {
      const depths = readings.map((r) => r.value)
      const within = depths.filter((d) => Math.abs(d - target) <= tolerance + 1e-6).length
      return [
        dateWithYear(date, context),
        String(depths.length),
        ...[mean(depths), Math.min(...depths), Math.max(...depths)].map((d) =>
          printed(d, 'fineDepth', context),
        ),
        printed(within / depths.length, 'share', context),
      ]
    })
}

/** The latest depth survey by station. */
export function stretchesOf(context: ComposeContext): readonly Stretch[] {
  const day = latestDay(context.facility.imported.surveys, 'cushion-depth')
  const oval = surveyedOval(context)
  const wanted = context.engine.siOfAll({
    target: 'cushion.depth.target',
    tolerance: 'cushion.depth.tolerance',
    weight: 'cushion.unit-weight.worked',
  })
  return day && oval && wanted ? depthStretches(day.readings, oval, wanted, wanted.weight) : []
}

export const surveyStationRows = (context: ComposeContext): TableRows =>
  stretchesOf(context).map((s) => [
    printed(s.station, 'reach', context),
    s.cells.map((c) => printed(c.value, 'fineDepth', context)).join(' · '),
    printed(mean(s.cells.map((c) => c.value)), 'fineDepth', context),
    printed(s.over, 'mass', context),
    printed(s.short, 'mass', context),
  ])

/** Smallest load worth a trip, kg: half a ton. */
const leastLoad = 500

/** What goes from which station to which, by the latest survey. */
export function movesOf(context: ComposeContext): readonly Move[] {
  const balances = stretchesOf(context).map((s) => ({ ...s, net: s.over - s.short }))
  return materialMoves(balances, context.engine.si('rail.length') ?? 0, leastLoad)
}

/**
 * What is moved from which station to which; what is left goes to the stockpile or comes from it.
 */
export function surveyMoveRows(context: ComposeContext): TableRows {
  const { words } = context.library
  const at = (station: number | undefined): string =>
    station === undefined ? words.plans.stockpile : printed(station, 'reach', context)
  return movesOf(context).map(({ from, to, amount, distance }) => [
    at(from),
    at(to),
    printed(amount, 'mass', context),
    from === undefined || to === undefined
      ? '–'
      : from === to
        ? words.plans.across
        : printed(distance, 'reach', context),
  ])
}

import { latestDay } from '../../compute/survey/latest-day.ts'
import { type LevelStation, levelStations } from '../../compute/survey/level-survey.ts'
import { materialMoves } from '../../compute/survey/material-moves.ts'
import { type SurveyCell, surveyCells } from '../../compute/survey/survey-cells.ts'
import type { LevelSection } from '../../model/charts.ts'
import type { Manual } from '../../model/manual.ts'
import { byStation, type SurveyedOval } from '../../model/survey.ts'
import { shortDate } from './dates.ts'
import { numberOf, type PlanContext, printed } from './plan-context.ts'

type Rows = readonly (readonly string[])[]

/** The shape and width that the survey's figures were worked with. */
function ovalOf({ computed }: PlanContext): SurveyedOval | undefined {
  const [straight, radius, widthStraights, widthTurns] = [
    'shape.straight',
    'shape.radius',
    'oval.width.straights',
    'oval.width.turns',
  ].map((name) => numberOf(computed.engine, name))
  return straight === undefined ||
    radius === undefined ||
    widthStraights === undefined ||
    widthTurns === undefined
    ? undefined
    : { straight, radius, widthStraights, widthTurns }
}

const mean = (values: readonly number[]): number =>
  values.reduce((a, b) => a + b, 0) / values.length

/** One row for each day on which the depth was surveyed, the oldest first. */
export function surveyDayRows(context: PlanContext): Rows {
  const [target = 0, tolerance = 0] = ['cushion.depth.target', 'cushion.depth.tolerance'].map(
    (name) => numberOf(context.computed.engine, name),
  )
  return context.facility.surveys
    .filter((s) => s.of === 'cushion-depth')
    .flatMap((s) => s.days)
    .sort((a, b) => a.date.localeCompare(b.date))
    .map(({ date, readings }) => {
      const depths = readings.map((r) => r.value)
      const within = depths.filter((d) => Math.abs(d - target) <= tolerance + 1e-6).length
      return [
        `${shortDate(date, context.computed.locale.system)}, ${date.slice(0, 4)}`,
        String(depths.length),
        ...[mean(depths), Math.min(...depths), Math.max(...depths)].map((d) =>
          printed(d, 'fineDepth', context),
        ),
        printed(within / depths.length, 'share', context),
      ]
    })
}

type Stretch = {
  readonly station: number
  readonly cells: readonly SurveyCell[]
  readonly over: number
  readonly short: number
}

/**
 * The latest depth survey by station, with the mass that each stretch has too much or too little
 * of, kg.
 */
function stretches(
  context: PlanContext,
): { readonly list: readonly Stretch[]; readonly rail: number } | undefined {
  const day = latestDay(context.facility.surveys, 'cushion-depth')
  const oval = ovalOf(context)
  const [target, weight, rail] = [
    'cushion.depth.target',
    'cushion.unit-weight.worked',
    'rail.length',
  ].map((name) => numberOf(context.computed.engine, name))
  if (!day || !oval || target === undefined || weight === undefined || rail === undefined)
    return undefined
  const list = byStation(surveyCells(day.readings, oval)).map(({ station, readings }) => {
    const cells = readings as readonly SurveyCell[]
    return {
      station,
      cells,
      over: cells.reduce((sum, c) => sum + c.area * Math.max(c.value - target, 0) * weight, 0),
      short: cells.reduce((sum, c) => sum + c.area * Math.max(target - c.value, 0) * weight, 0),
    }
  })
  return { list, rail }
}

export function surveyStationRows(context: PlanContext): Rows {
  return (stretches(context)?.list ?? []).map((s) => [
    printed(s.station, 'reach', context),
    s.cells.map((c) => printed(c.value, 'fineDepth', context)).join(' · '),
    printed(mean(s.cells.map((c) => c.value)), 'fineDepth', context),
    printed(s.over, 'mass', context),
    printed(s.short, 'mass', context),
  ])
}

/** Smallest load worth a trip, kg: half a ton. */
const leastLoad = 500

/**
 * What is moved from which station to which; what is left goes to the stockpile or comes from it.
 */
export function surveyMoveRows(context: PlanContext): Rows {
  const found = stretches(context)
  if (!found) return []
  const { words } = context
  const at = (station: number | undefined): string =>
    station === undefined ? words.plans.stockpile : printed(station, 'reach', context)
  const parts = found.list.flatMap((s) => [
    { station: s.station, excess: s.over },
    { station: s.station, excess: -s.short },
  ])
  return materialMoves(parts, found.rail, leastLoad).map((m) => [
    at(m.from),
    at(m.to),
    printed(m.amount, 'mass', context),
    m.from === undefined || m.to === undefined
      ? '–'
      : m.from === m.to
        ? words.plans.across
        : printed(m.distance, 'reach', context),
  ])
}

/** The latest level survey by station. */
function levelsOf(context: PlanContext): readonly LevelStation[] {
  const day = latestDay(context.facility.surveys, 'surface-level')
  const oval = ovalOf(context)
  const [straights, turns] = ['oval.cross-fall.straights', 'oval.cross-fall.turns'].map((name) =>
    numberOf(context.computed.engine, name),
  )
  return !day || !oval || straights === undefined || turns === undefined
    ? []
    : levelStations(day, oval, straights, turns)
}

export const levelStationRows = (context: PlanContext): Rows =>
  levelsOf(context).map((s) => [
    printed(s.station, 'reach', context),
    printed(s.found, 'fineShare', context),
    printed(s.wanted, 'fineShare', context),
    printed(s.worst, 'fineDepth', context),
    printed(s.high, 'smallArea', context),
  ])

/** Stations that one page has room for. */
const mostSections = 12

/**
 * Sections across the track as found; of many those with the most to grade across, in their order.
 */
export function composeLevelSections(context: PlanContext): readonly LevelSection[] {
  const levels = levelsOf(context)
  const least = [...levels].sort((a, b) => b.high - a.high)[mostSections - 1]?.high ?? 0
  return levels
    .filter((s) => s.high >= least)
    .slice(0, mostSections)
    .map((s) => ({
      station: printed(s.station, 'reach', context),
      width: s.width,
      found: printed(s.found, 'fineShare', context),
      wanted: printed(s.wanted, 'fineShare', context),
      points: s.points.map((p) => ({
        ...p,
        height: printed(Math.abs(p.above), 'fineDepth', context),
      })),
    }))
}

/** The latest depth survey as its map needs it. */
export function composeCushionMap(context: PlanContext): Manual['cushionMap'] {
  const day = latestDay(context.facility.surveys, 'cushion-depth')
  const found = stretches(context)
  const [target, tolerance] = ['cushion.depth.target', 'cushion.depth.tolerance'].map((name) =>
    numberOf(context.computed.engine, name),
  )
  if (!day || !found || target === undefined || tolerance === undefined) return undefined
  const cells = found.list
    .flatMap((s) => s.cells)
    .map(({ from, to, inner, outer, value }) => ({
      from,
      to,
      inner,
      outer,
      value,
      text: printed(value, 'fineDepth', context),
    }))
  return { date: day.date, target, tolerance, cells }
}

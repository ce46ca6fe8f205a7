import { latestDay } from '../../compute/survey/latest-day.ts'
import { type LevelStation, levelStations } from '../../compute/survey/level-survey.ts'
import type { TableRows } from '../../model/manual/schedule.ts'
import { type ComposeContext, printed } from '../context.ts'
import { surveyedOval } from './surveyed-oval.ts'

/** The latest level survey by station. */
export function levelsOf(context: ComposeContext): readonly LevelStation[] {
  const day = latestDay(context.facility.imported.surveys, 'surface-level')
  const oval = surveyedOval(context)
  const wanted = context.engine.siOfAll({
    straights: 'oval.cross-fall.straights',
    turns: 'oval.cross-fall.turns',
    blend: 'oval.blend',
    depth: 'cushion.depth.target',
  })
  return day && oval && wanted ? levelStations(day, oval, wanted) : []
}

export const levelStationRows = (context: ComposeContext): TableRows =>
  levelsOf(context).map((s) => [
    printed(s.station, 'reach', context),
    printed(s.found, 'fineShare', context),
    printed(s.wanted, 'fineShare', context),
    printed(s.worst, 'fineDepth', context),
    printed(s.high, 'smallArea', context),
  ])

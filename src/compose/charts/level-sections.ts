import type { LevelSection } from '../../model/manual/charts.ts'
import { type ComposeContext, printed } from '../context.ts'
import { levelsOf } from '../survey/level-survey.ts'

/** Stations that one page has room for. */
const mostSections = 12

/**
 * Sections across the track as found; of many those with the most to grade across, in their order.
 */
export function composeLevelSections(context: ComposeContext): readonly LevelSection[] {
  const levels = levelsOf(context)
  const least = levels.toSorted((a, b) => b.high - a.high)[mostSections - 1]?.high ?? 0
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

import { depthBalance } from '../survey/depth-balance.ts'
import { depthSurvey } from '../survey/depth-survey.ts'
import { levelSurvey } from '../survey/level-survey.ts'
import { strip } from './oval.ts'
import type { Readings } from './readings.ts'
import { fact, type Use, use } from './use.ts'

const target = fact('cushion.depth.target')
const unitWeight = fact('cushion.unit-weight.worked')

/** What the latest surveys of depth and of level say. */
export function surveyUses({ depths, levels }: Readings): readonly Use[] {
  return [
    ...(levels
      ? [
          use('levels', levelSurvey(levels), {
            ...strip,
            wantedStraights: fact('oval.cross-fall.straights'),
            wantedTurns: fact('oval.cross-fall.turns'),
            blend: fact('oval.blend'),
            depth: target,
            unitWeight,
            baseWeight: fact('cushion.unit-weight.compacted'),
          }),
        ]
      : []),
    ...(depths
      ? [
          use('depths', depthSurvey(depths), {
            target,
            tolerance: fact('cushion.depth.tolerance'),
          }),
          use('balance', depthBalance(depths), { ...strip, target, unitWeight }),
        ]
      : []),
  ]
}

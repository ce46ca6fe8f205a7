import type { WashoutCut } from '../../model/manual/charts.ts'
import type { ComposeContext } from '../context.ts'

/** The washout of the worked example, in section. */
export function composeWashoutCut({ engine }: ComposeContext): WashoutCut | undefined {
  return engine.siOfAll({
    width: 'practice.washout.width',
    depth: 'practice.washout.depth',
    lifts: 'washout.lifts',
    thinShare: 'washout.thin-share',
    cushion: 'cushion.depth.target',
  })
}

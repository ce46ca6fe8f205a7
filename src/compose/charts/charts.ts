import type { Charts } from '../../model/manual/charts.ts'
import type { ComposeContext } from '../context.ts'
import { type Composers, composeParts } from '../parts.ts'
import { composeCountdown } from './countdown.ts'
import { composeDryingCurve } from './drying-curve.ts'
import { composeHeatTable } from './heat-table.ts'
import { composeLevelSections } from './level-sections.ts'
import { composePasses } from './passes.ts'
import { composeRaceInterval } from './race-interval.ts'
import { composeRollingBlock } from './rolling-block.ts'
import { composeWashoutCut } from './washout-cut.ts'
import { composeWaterMonths } from './water-months.ts'

/** Who composes the data of which chart. */
const composers: Composers<Charts, ComposeContext> = {
  waterMonths: composeWaterMonths,
  heat: composeHeatTable,
  interval: composeRaceInterval,
  drying: composeDryingCurve,
  countdown: composeCountdown,
  levels: composeLevelSections,
  rolling: composeRollingBlock,
  washout: composeWashoutCut,
  passes: composePasses,
}

export const composeCharts = (context: ComposeContext): Charts =>
  composeParts(composers, () => context)

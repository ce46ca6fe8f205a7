import { byStation, type Reading, type SurveyedOval } from '../../model/survey.ts'
import { type SurveyCell, surveyCells } from './survey-cells.ts'

/** The track around one station of a depth survey. */
export type Stretch = {
  readonly station: number
  /** From the rail outward. */
  readonly cells: readonly SurveyCell[]
  /** Dry mass above the wanted depth, and missing below it, kg. */
  readonly over: number
  readonly short: number
}

/**
 * What each stretch of a depth survey has too much and too little of.
 * @param target Depth wanted, m.
 * @param unitWeight Dry mass of the worked cushion, kg/m³.
 * @returns One stretch a station, in their order.
 */
export function depthStretches(
  readings: readonly Reading[],
  oval: SurveyedOval,
  target: number,
  unitWeight: number,
): readonly Stretch[] {
  return byStation(surveyCells(readings, oval)).map(({ station, readings: cells }) => ({
    station,
    cells,
    over: cells.reduce((sum, c) => sum + c.area * Math.max(c.value - target, 0) * unitWeight, 0),
    short: cells.reduce((sum, c) => sum + c.area * Math.max(target - c.value, 0) * unitWeight, 0),
  }))
}

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
  /** The same of that ground alone which is farther from it than is allowed. */
  readonly tooDeep: number
  readonly tooThin: number
}

/** A reading at the limit is as wanted, m. */
const hair = 1e-6

/**
 * What each stretch of a depth survey has too much and too little of.
 * @param wanted Depth, and how far a reading may be from it, m.
 * @param unitWeight Dry mass of the worked cushion, kg/m³.
 * @returns One stretch a station, in their order.
 */
export function depthStretches(
  readings: readonly Reading[],
  oval: SurveyedOval,
  { target, tolerance }: { readonly target: number; readonly tolerance: number },
  unitWeight: number,
): readonly Stretch[] {
  /** Mass that ground lies off, to the side where `way` is 1, if by more than `least`. */
  const off = (cells: readonly SurveyCell[], way: 1 | -1, least: number): number =>
    cells
      .map((c) => ({ area: c.area, by: way * (c.value - target) }))
      .filter(({ by }) => by > least)
      .reduce((sum, { area, by }) => sum + area * by * unitWeight, 0)
  return byStation(surveyCells(readings, oval)).map(({ station, readings: cells }) => ({
    station,
    cells,
    over: off(cells, 1, 0),
    short: off(cells, -1, 0),
    tooDeep: off(cells, 1, tolerance + hair),
    tooThin: off(cells, -1, tolerance + hair),
  }))
}

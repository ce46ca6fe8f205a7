import type { SurveyDay, SurveyedOval } from '../../model/survey.ts'
import { calculation, refuse } from '../calculation.ts'
import { workedWeightInput } from '../cushion/cushion-inputs.ts'
import {
  crossFallStraightsInput,
  crossFallTurnsInput,
  radiusInput,
  straightInput,
  widthStraightsInput,
  widthTurnsInput,
} from '../oval/oval-inputs.ts'
import { aroundRail, turnShare, widthAt } from './along.ts'
import { levelLine } from './level-line.ts'
import { ringVolume } from './ring-volumes.ts'
import { sectionParts } from './station-section.ts'

/**
 * Half the stretch, m, over which one cross-fall runs into the other where straight and turn meet.
 */
const blend = 15

/** One station of a level survey against what is wanted there. */
export type LevelStation = {
  readonly station: number
  readonly found: number
  readonly wanted: number
  readonly worst: number /** Section to take off, m². */
  readonly high: number
  readonly onTurn: number
  readonly width: number /** Each reading above the wanted slope through the mean level, m. */
  readonly points: readonly { readonly offset: number; readonly above: number }[]
}

/**
 * Each station of a level survey with its cross-fall found and wanted, and what stands above the
 * wanted slope through its mean level.
 */
export function levelStations(
  day: SurveyDay,
  oval: SurveyedOval,
  straights: number,
  turns: number,
): readonly LevelStation[] {
  return aroundRail(day.readings, oval).map(({ station, readings }) => {
    const line = levelLine(readings)
    const onTurn = turnShare(oval, station - blend, station + blend)
    const wanted = straights + (turns - straights) * onTurn
    const width = widthAt(oval, station)
    const wantedLevel = (offset: number): number =>
      line.meanLevel + wanted * (offset - line.meanOffset)
    const { over } = sectionParts(readings, wantedLevel, width)
    return {
      station,
      found: line.slope,
      wanted,
      worst: line.worst,
      high: over,
      onTurn,
      width,
      points: readings.map((r) => ({ offset: r.offset, above: r.value - wantedLevel(r.offset) })),
    }
  })
}

const mean = (values: readonly number[]): number =>
  values.reduce((a, b) => a + b, 0) / values.length

/**
 * Cross-fall found by levels, and the material that stands too high at one side of a station and is
 * missing at the other.
 * @param day A survey of surface levels; each station has readings at two offsets at least.
 */
export const levelSurvey = (day: SurveyDay) =>
  calculation({
    id: 'level-survey',
    sources: ['navedtra-14080', 'geometry'],
    inputs: {
      wantedStraights: crossFallStraightsInput,
      wantedTurns: crossFallTurnsInput,
      unitWeight: workedWeightInput,
      straight: straightInput,
      radius: radiusInput,
      widthStraights: widthStraightsInput,
      widthTurns: widthTurnsInput,
    },
    outputs: {
      stations: { symbol: 'n', kind: 'count', tex: '\\textstyle\\sum_k 1' },
      straights: {
        symbol: '\\bar e_s',
        kind: 'fineShare',
        tex: '\\frac{1}{n_s} \\textstyle\\sum_k e_k',
      },
      turns: {
        symbol: '\\bar e_t',
        kind: 'fineShare',
        tex: '\\frac{1}{n_t} \\textstyle\\sum_k e_k',
      },
      worst: {
        symbol: 'h',
        kind: 'fineDepth',
        tex: '\\max_{k,i} |z_{ki} - \\bar z_k - e_k (x_{ki} - \\bar x_k)|',
      },
      volume: {
        symbol: 'V',
        kind: 'fillVolume',
        tex: '\\textstyle\\sum_k \\tfrac12 (F_k + F_{k+1})\\,L_k',
      },
      mass: { symbol: 'M', kind: 'mass', tex: '@volume\\,@unitWeight' },
    },
    told: { date: day.date },
    refusals: ['no-station-on-straight', 'no-station-on-turn'],
    compute: ({ wantedStraights, wantedTurns, unitWeight, ...oval }) => {
      const stations = levelStations(day, oval, wantedStraights, wantedTurns)
      const [flat, bent] = [
        stations.filter((s) => s.onTurn === 0),
        stations.filter((s) => s.onTurn === 1),
      ]
      const volume = ringVolume(
        stations.map((s) => ({ station: s.station, area: s.high })),
        oval,
      )
      return {
        stations: stations.length,
        straights:
          flat.length > 0 ? mean(flat.map((s) => s.found)) : refuse('no-station-on-straight'),
        turns: bent.length > 0 ? mean(bent.map((s) => s.found)) : refuse('no-station-on-turn'),
        worst: Math.max(...stations.map((s) => s.worst)),
        volume,
        mass: volume * unitWeight,
      }
    },
  })

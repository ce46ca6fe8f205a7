import type { SurveyDay, SurveyedOval } from '../../model/survey.ts'
import { calculation, type OutputSpec, refuse } from '../calculation.ts'
import {
  depthTargetInput,
  packedWeightInput,
  workedWeightInput,
} from '../cushion/cushion-inputs.ts'
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
import { levelSteps, stationSteps } from './survey-steps.ts'

/** One station of a level survey against what is wanted there. */
export type LevelStation = {
  readonly station: number
  readonly found: number
  readonly wanted: number
  readonly worst: number
  /** Section to take off, m², and what of it lies deeper than the cushion. */
  readonly high: number
  readonly base: number
  readonly onTurn: number
  readonly width: number
  /** Each reading above the wanted slope through the mean level, m. */
  readonly points: readonly { readonly offset: number; readonly above: number }[]
}

/** What a surface is held against. */
export type WantedSurface = {
  readonly straights: number
  readonly turns: number
  /** Half the stretch, m, over which one cross-fall runs into the other. */
  readonly blend: number
  /** Of the cushion, m: what stands higher than that above the wanted slope is base. */
  readonly depth: number
}

/**
 * Each station of a level survey with its cross-fall found and wanted, and what stands above the
 * wanted slope through its mean level.
 */
export function levelStations(
  day: SurveyDay,
  oval: SurveyedOval,
  { straights, turns, blend, depth }: WantedSurface,
): readonly LevelStation[] {
  return aroundRail(day.readings, oval).map(({ station, readings }) => {
    const line = levelLine(readings)
    const onTurn = turnShare(oval, station - blend, station + blend)
    const wanted = straights + (turns - straights) * onTurn
    const width = widthAt(oval, station)
    const wantedLevel = (offset: number): number =>
      line.meanLevel + wanted * (offset - line.meanOffset)
    const { over } = sectionParts(readings, wantedLevel, width)
    const deeper = sectionParts(readings, (offset) => wantedLevel(offset) + depth, width)
    return {
      station,
      found: line.slope,
      wanted,
      worst: line.worst,
      high: over,
      base: deeper.over,
      onTurn,
      width,
      points: readings.map((r) => ({ offset: r.offset, above: r.value - wantedLevel(r.offset) })),
    }
  })
}

const mean = (values: readonly number[]): number =>
  values.reduce((a, b) => a + b, 0) / values.length

/** What the sections wanted are drawn from. */
const wantedShape = [
  'wantedStraights',
  'wantedTurns',
  'blend',
  'straight',
  'radius',
  'widthStraights',
  'widthTurns',
]

const outputs = {
  stations: { symbol: 'n', kind: 'count', tex: '\\textstyle\\sum_k 1' },
  straights: {
    symbol: '\\bar e_s',
    kind: 'fineShare',
    tex: '\\frac{1}{n_s} \\textstyle\\sum_k e_k',
    restsOn: ['straight', 'radius'],
  },
  turns: {
    symbol: '\\bar e_t',
    kind: 'fineShare',
    tex: '\\frac{1}{n_t} \\textstyle\\sum_k e_k',
    restsOn: ['straight', 'radius', 'blend'],
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
    restsOn: wantedShape,
  },
  base: {
    symbol: 'V_b',
    kind: 'fillVolume',
    tex: '\\textstyle\\sum_k \\tfrac12 (B_k + B_{k+1})\\,L_k',
    restsOn: [...wantedShape, 'depth'],
  },
  mass: { symbol: 'M', kind: 'mass', tex: '(@volume - @base)\\,@unitWeight' },
  'base-mass': { symbol: 'M_b', kind: 'mass', tex: '@base\\,@baseWeight' },
} as const satisfies Readonly<Record<string, OutputSpec>>

/** What stations are worked from. */
type Wanted = SurveyedOval & {
  readonly wantedStraights: number
  readonly wantedTurns: number
  readonly blend: number
  readonly depth: number
}

const stationsFor = (day: SurveyDay, x: Wanted): readonly LevelStation[] =>
  levelStations(day, x, {
    straights: x.wantedStraights,
    turns: x.wantedTurns,
    blend: x.blend,
    depth: x.depth,
  })

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
      blend: { symbol: 'b', kind: 'width', range: [0, 60] },
      depth: depthTargetInput,
      unitWeight: workedWeightInput,
      baseWeight: packedWeightInput,
      straight: straightInput,
      radius: radiusInput,
      widthStraights: widthStraightsInput,
      widthTurns: widthTurnsInput,
    },
    outputs,
    told: { date: day.date },
    refusals: ['no-station-on-straight', 'no-station-on-turn'],
    steps: {
      stations: (x) => stationSteps(stationsFor(day, x), x),
      readings: (x) => levelSteps(day, stationsFor(day, x)),
    },
    compute: ({ unitWeight, baseWeight, ...x }) => {
      const stations = stationsFor(day, x)
      const [flat, bent] = [
        stations.filter((s) => s.onTurn === 0),
        stations.filter((s) => s.onTurn === 1),
      ]
      const around = (area: (s: LevelStation) => number): number =>
        ringVolume(
          stations.map((s) => ({ station: s.station, area: area(s) })),
          x,
        )
      const [volume, base] = [around((s) => s.high), around((s) => s.base)]
      return {
        stations: stations.length,
        straights:
          flat.length > 0 ? mean(flat.map((s) => s.found)) : refuse('no-station-on-straight'),
        turns: bent.length > 0 ? mean(bent.map((s) => s.found)) : refuse('no-station-on-turn'),
        worst: Math.max(...stations.map((s) => s.worst)),
        volume,
        base,
        mass: (volume - base) * unitWeight,
        'base-mass': base * baseWeight,
      }
    },
  })

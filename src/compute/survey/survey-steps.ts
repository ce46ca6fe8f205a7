import type { SurveyDay, SurveyedOval } from '../../model/survey.ts'
import type { Steps } from '../calculation.ts'
import { lengthAt, railOf, widthAt } from './along.ts'
import { levelLine } from './level-line.ts'
import type { LevelStation } from './level-survey.ts'
import { surveyCells } from './survey-cells.ts'

/** The readings of a survey with what each adds to the sums, for whoever follows them by hand. */

const place = [
  { symbol: 's', kind: 'distance' },
  { symbol: 'x', kind: 'distance' },
] as const

/** Each depth with its distance from the mean, squared, and whether it is within the tolerance. */
export function depthSteps(
  { readings }: SurveyDay,
  { within }: { readonly within: (depth: number) => boolean },
): Steps {
  const mean = readings.reduce((sum, r) => sum + r.value, 0) / readings.length
  return {
    columns: [
      ...place,
      { symbol: 'd_i', kind: 'fineDepth' },
      { symbol: 'd_i - \\bar d', kind: 'fineDepth' },
      { symbol: '[|d_i - d| \\le \\delta]' },
    ],
    rows: readings.map((r) => [
      r.station,
      r.offset,
      r.value,
      r.value - mean,
      Number(within(r.value)),
    ]),
  }
}

/** Each depth with the part of the track that it stands for and the volumes over and short. */
export function balanceSteps(day: SurveyDay, target: number, oval: SurveyedOval): Steps {
  return {
    columns: [
      ...place,
      { symbol: 'd_i', kind: 'fineDepth' },
      { symbol: 'A_i', kind: 'area' },
      { symbol: 'A_i\\,\\max(d_i - d,\\,0)', kind: 'fillVolume' },
      { symbol: 'A_i\\,\\max(d - d_i,\\,0)', kind: 'fillVolume' },
    ],
    rows: surveyCells(day.readings, oval).map(({ station, offset, value, area }) => [
      station,
      offset,
      value,
      area,
      area * Math.max(value - target, 0),
      area * Math.max(target - value, 0),
    ]),
  }
}

type Section = { readonly station: number; readonly areas: readonly number[] }

/**
 * Sections with the way to the next along the middle of the track: what average end areas are made
 * of.
 */
export function endAreaSteps(
  sections: readonly Section[],
  symbols: readonly string[],
  oval: SurveyedOval,
): Steps {
  return {
    columns: [
      { symbol: 's', kind: 'distance' },
      ...symbols.map((symbol) => ({ symbol, kind: 'smallArea' as const })),
      { symbol: 'L', kind: 'distance' },
    ],
    rows: sections.map(({ station, areas }, i) => {
      const next = sections[(i + 1) % sections.length]?.station ?? station
      const to = next > station ? next : next + railOf(oval)
      return [station, ...areas, lengthAt(oval, station, to, widthAt(oval, station) / 2)]
    }),
  }
}

/** Each station of a level survey with its slope found and wanted, and the sections too high. */
export function stationSteps(stations: readonly LevelStation[], oval: SurveyedOval): Steps {
  const ends = endAreaSteps(
    stations.map(({ station, high, base }) => ({ station, areas: [high, base] })),
    ['F', 'B'],
    oval,
  )
  const [first, ...rest] = ends.columns
  return {
    columns: [
      ...(first ? [first] : []),
      { symbol: '\\text{on the turn}' },
      { symbol: 'e_k', kind: 'fineShare' },
      { symbol: 'e_0', kind: 'fineShare' },
      ...rest,
    ],
    rows: stations.map(({ onTurn, found, wanted }, i) => {
      const [station, ...areas] = ends.rows[i] ?? []
      return [station ?? 0, onTurn, found, wanted, ...areas]
    }),
  }
}

/** Each level with its distance from the straight line through its station, and above the slope. */
export function levelSteps(day: SurveyDay, stations: readonly LevelStation[]): Steps {
  return {
    columns: [
      ...place,
      { symbol: 'z', kind: 'distance' },
      { symbol: 'z - \\bar z - e_k\\,(x - \\bar x)', kind: 'fineDepth' },
      { symbol: 'z - \\bar z - e_0\\,(x - \\bar x)', kind: 'fineDepth' },
    ],
    rows: stations.flatMap(({ station, points }) => {
      const readings = day.readings
        .filter((r) => r.station === station)
        .toSorted((a, b) => a.offset - b.offset)
      const line = levelLine(readings)
      return readings.map((r, i) => [
        station,
        r.offset,
        r.value,
        r.value - line.meanLevel - line.slope * (r.offset - line.meanOffset),
        points[i]?.above ?? '',
      ])
    }),
  }
}

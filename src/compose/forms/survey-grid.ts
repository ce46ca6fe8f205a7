import { latestDay } from '../../compute/survey/latest-day.ts'
import { formatExact } from '../../model/quantity/format-exact.ts'
import { byStation } from '../../model/survey.ts'
import { type ComposeContext, printed } from '../context.ts'

/** Where a depth survey is read, meters: stations along the rail, and lines across the track. */
type SurveyPlaces = {
  readonly stations: readonly number[]
  /** Distances of the lines from the rail; none where no survey has set them. */
  readonly offsets: readonly number[]
  readonly lines: number
  readonly surveyed: boolean
}

/** The same as it is printed. */
export type SurveyGrid = {
  readonly stations: readonly string[]
  readonly offsets: readonly string[]
  readonly lines: number
}

/** As last time, so that surveys can be compared; without a survey, evenly around the rail. */
export function surveyPlaces({ engine, facility }: ComposeContext): SurveyPlaces {
  const last = byStation(latestDay(facility.imported.surveys, 'cushion-depth')?.readings ?? [])
  const fullest = last.toSorted((a, b) => b.readings.length - a.readings.length)[0]
  if (fullest)
    return {
      stations: last.map((s) => s.station),
      offsets: fullest.readings.map((r) => r.offset),
      lines: fullest.readings.length,
      surveyed: true,
    }
  const stations = Math.round(engine.si('practice.survey.stations') ?? 0)
  const rail = engine.si('rail.length') ?? 0
  return {
    stations: Array.from({ length: stations }, (_, i) => (i * rail) / stations),
    offsets: [],
    lines: Math.round(engine.si('practice.survey.lines') ?? 0),
    surveyed: false,
  }
}

export function surveyGrid(context: ComposeContext): SurveyGrid {
  const { stations, offsets, lines, surveyed } = surveyPlaces(context)
  const exact = (si: number): string => formatExact(si, 'reach', context.locale)
  return {
    stations: stations.map((si) => (surveyed ? exact(si) : printed(si, 'reach', context))),
    offsets: offsets.map(exact),
    lines,
  }
}

import { latestDay } from '../../compute/survey/latest-day.ts'
import { formatExact } from '../../model/quantity/format-exact.ts'
import { byStation } from '../../model/survey.ts'
import { type ComposeContext, printed } from '../context.ts'

/** Where a depth survey is read: stations along the rail, and lines across the track. */
export type SurveyGrid = {
  readonly stations: readonly string[]
  /** Distances of the lines from the rail; none where no survey has set them. */
  readonly offsets: readonly string[]
  readonly lines: number
}

/** As last time, so that surveys can be compared; without a survey, evenly around the rail. */
export function surveyGrid(context: ComposeContext): SurveyGrid {
  const { engine, facility, locale } = context
  const last = byStation(latestDay(facility.imported.surveys, 'cushion-depth')?.readings ?? [])
  const exact = (si: number): string => formatExact(si, 'reach', locale)
  const fullest = last.toSorted((a, b) => b.readings.length - a.readings.length)[0]
  if (fullest)
    return {
      stations: last.map((s) => exact(s.station)),
      offsets: fullest.readings.map((r) => exact(r.offset)),
      lines: fullest.readings.length,
    }
  const stations = Math.round(engine.si('practice.survey.stations') ?? 0)
  const rail = engine.si('rail.length') ?? 0
  return {
    stations: Array.from({ length: stations }, (_, i) =>
      printed((i * rail) / stations, 'reach', context),
    ),
    offsets: [],
    lines: Math.round(engine.si('practice.survey.lines') ?? 0),
  }
}

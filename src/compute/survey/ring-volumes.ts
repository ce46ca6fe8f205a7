import type { SurveyedOval } from '../../model/survey.ts'
import { lengthAt, railOf, widthAt } from './along.ts'
import { endAreaVolume } from './end-area.ts'

/**
 * Volume around the whole oval from a section at each station, by average end areas along the
 * middle of the track; the last section is followed by the first.
 * @param sections At least two, in the order of their stations: area in m², ≥ 0, station in m.
 * @returns m³.
 * @see navedtra-14080
 */
export function ringVolume(
  sections: readonly { readonly station: number; readonly area: number }[],
  oval: SurveyedOval,
): number {
  return sections.reduce((sum, { station, area }, i) => {
    const next = sections[(i + 1) % sections.length] ?? { station, area }
    const to = next.station > station ? next.station : next.station + railOf(oval)
    return (
      sum + endAreaVolume(area, next.area, lengthAt(oval, station, to, widthAt(oval, station) / 2))
    )
  }, 0)
}

import { lapLength } from '../../model/oval-shape.ts'
import { byStation, type Reading, type SurveyedOval } from '../../model/survey.ts'

/** Length of the rail, m. @see geometry */
export const railOf = (oval: SurveyedOval): number => lapLength(oval.straight, oval.radius, 0)

/** Readings of each station, in the order of the stations; the end of the rail is its start. */
export const aroundRail = (
  readings: readonly Reading[],
  oval: SurveyedOval,
): ReturnType<typeof byStation> =>
  byStation(readings.map((r) => ({ ...r, station: r.station % railOf(oval) })))

/**
 * Rail, m, that lies on turns between the start of the home straight and a station of the first
 * lap.
 */
function turnsBefore({ straight, radius }: SurveyedOval, station: number): number {
  const turn = Math.PI * radius
  return (
    Math.min(turn, Math.max(0, station - straight)) +
    Math.min(turn, Math.max(0, station - 2 * straight - turn))
  )
}

/**
 * Ground between two stations along a line that runs `offset` outside the rail: on straights as
 * long as the rail, on turns longer by (R + offset) ÷ R.
 * @param from Station along the rail, m.
 * @param to Station, m; when smaller than `from`, the stretch runs through the start of the home
 * straight.
 * @param offset m, ≥ 0.
 * @returns m.
 * @see geometry
 */
export function lengthAt(oval: SurveyedOval, from: number, to: number, offset: number): number {
  const rail = railOf(oval)
  const upTo = (s: number): number => {
    const laps = Math.floor(s / rail)
    const rest = s - laps * rail
    const turns = laps * 2 * Math.PI * oval.radius + turnsBefore(oval, rest)
    return s + (turns * offset) / oval.radius
  }
  return upTo(to < from ? to + rail : to) - upTo(from)
}

/** What adding lengths of a lap may leave, as a share. */
const rounding = 1e-9

/** Share of a stretch of rail, from a station to a later one, that lies on turns. */
export function turnShare(oval: SurveyedOval, from: number, to: number): number {
  const end = to < from ? to + railOf(oval) : to
  if (end === from) return 0
  const share = (lengthAt(oval, from, to, oval.radius) - (end - from)) / (end - from)
  // A stretch that ends where straight and turn meet lies wholly on one of them.
  return share < rounding ? 0 : share > 1 - rounding ? 1 : share
}

/** Width of the track at a station, m: that of the straight or of the turn it lies on. */
export function widthAt(oval: SurveyedOval, station: number): number {
  const s = station % railOf(oval)
  const turn = Math.PI * oval.radius
  const onTurn = (s > oval.straight && s < oval.straight + turn) || s > 2 * oval.straight + turn
  return onTurn ? oval.widthTurns : oval.widthStraights
}

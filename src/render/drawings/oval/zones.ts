import type { OvalGeometry } from '../../../model/manual/geometry.ts'
import { decimalText } from '../../../model/quantity/number-text.ts'
import { foot } from '../../../model/quantity/units.ts'
import { line, type Point } from '../ink.ts'
import type { Detail, OvalContext } from './detail.ts'
import { onPlan, type PlanFrame } from './frame.ts'
import { type Place, pointsAlong } from './label-places.ts'
import type { PlanPart } from './marks.ts'

/** Straights and turns in the order in which horses run them. */
export const zoneNames = ['homeStraight', 'firstTurn', 'backStraight', 'lastTurn'] as const

/** Where each begins and ends, meters along the rail. */
export function zones(g: OvalGeometry): readonly {
  readonly name: (typeof zoneNames)[number]
  readonly from: number
  readonly to: number
}[] {
  const arc = Math.PI * g.radius
  const ends = [0, g.straight, g.straight + arc, 2 * g.straight + arc, g.railLength]
  return zoneNames.map((name, i) => ({ name, from: ends[i] ?? 0, to: ends[i + 1] ?? 0 }))
}

/** Stations as people say them: feet or meters, to the nearest. */
export const stationText = (meters: number, us: boolean): string =>
  `${decimalText(Math.round(us ? meters / foot : meters), 0)} ${us ? 'ft' : 'm'}`

/** How far a name may stand from its place along the zone, the best first, points. */
const asides = [0, 15, -15, 31, -31, 46, -46]
const farAsides = [62, -62, 77, -77, 98, -98, 119, -119, 140, -140]

/** Inside the rail; in a turn, where there is less room, deeper and not as far aside. */
function namePlaces({ g, k }: PlanFrame, turn: boolean, at: Point, out: Point): readonly Place[] {
  const depths = turn
    ? [0.68, 0.75, 0.82, 0.6].map((part) => g.radius * k * part)
    : [26, 29, 34, 43, 52]
  return depths.flatMap((d) =>
    [...asides, ...(turn ? [] : farAsides)].map((aside): Place => {
      const x = at[0] - out[0] * d - out[1] * aside
      const y = at[1] - out[1] * d + (turn ? out[0] * aside : 0) + (out[1] < -0.5 ? 3 : 0)
      return { at: [x, y], anchor: 'middle' }
    }),
  )
}

/**
 * Lines across the track where straights and turns meet, and the names of the zones with their
 * stations.
 */
export function zoneParts(
  frame: PlanFrame,
  { size }: Detail,
  { words }: OvalContext,
  feet: boolean,
): readonly PlanPart[] {
  const { g } = frame
  const outside = Math.max(g.widthStraights, g.widthTurns)
  return zones(g).map(({ name, from, to }): PlanPart => {
    const across = [onPlan(frame, from, 0).at, onPlan(frame, from, outside).at] as const
    const turn = name === 'firstTurn' || name === 'lastTurn'
    const { at, out } = onPlan(frame, (from + to) / 2, 0)
    const range = `${stationText(from, feet)} – ${stationText(to, feet)}`
    const lines = turn ? [words[name], range] : [`${words[name]}, ${range}`]
    const places = namePlaces(frame, turn, at, out)
    return {
      drawn: line(across[0], across[1], { pen: 'hair', dash: '3 2' }),
      lines: pointsAlong(across),
      labels: [{ lines, size, bold: true, spare: true, places }],
    }
  })
}

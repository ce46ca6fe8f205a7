import { straightsArea, turnsArea } from '../../model/oval-shape.ts'
import type { Reading, SurveyedOval } from '../../model/survey.ts'
import { aroundRail, lengthAt, railOf, widthAt } from './along.ts'

/** A reading with the part of the track that it stands for. */
export type SurveyCell = Reading & {
  /**
   * Stations between which the part lies, m; `from` may lie before the start of the home straight
   * (below zero).
   */
  readonly from: number
  readonly to: number
  /** Offsets between which it lies, m. */
  readonly inner: number
  readonly outer: number
  /** m², seen from above. */
  readonly area: number
}

/** The track, m². */
const areaOf = ({ straight, radius, widthStraights, widthTurns }: SurveyedOval): number =>
  straightsArea(straight, widthStraights) + turnsArea(radius, widthTurns)

const middle = (a: number, b: number): number => (a + b) / 2

/**
 * Shares the whole track out among the readings: each stands for the ground halfway to its
 * neighbors, around the oval and across it; the first and the last of a station reach to the rail
 * and to the outside edge.
 * @param readings Of one day; at least two stations.
 * @returns One cell a reading, by station and from the rail outward; their areas add up to the
 * track's.
 * @see geometry
 */
export function surveyCells(
  readings: readonly Reading[],
  oval: SurveyedOval,
): readonly SurveyCell[] {
  const rail = railOf(oval)
  const stations = aroundRail(readings, oval)
  const cells = stations.flatMap(({ station, readings: across }, i) => {
    const last = stations[i - 1]?.station ?? (stations.at(-1)?.station ?? 0) - rail
    const next = stations[i + 1]?.station ?? (stations[0]?.station ?? 0) + rail
    const [from, to] = [middle(last, station), middle(station, next)]
    const width = widthAt(oval, station)
    return across.map((r, j) => {
      const inner = j === 0 ? 0 : middle(across[j - 1]?.offset ?? 0, r.offset)
      const outer =
        j === across.length - 1
          ? Math.max(width, r.offset)
          : middle(r.offset, across[j + 1]?.offset ?? width)
      return {
        ...r,
        from,
        to,
        inner,
        outer,
        area: lengthAt(oval, from + rail, to + rail, middle(inner, outer)) * (outer - inner),
      }
    })
  })
  // A cell takes the width at its station, also where it reaches over onto a turn of another width.
  const share = areaOf(oval) / cells.reduce((sum, c) => sum + c.area, 0)
  return cells.map((c) => ({ ...c, area: c.area * share }))
}

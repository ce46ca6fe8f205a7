import { byStation, type Reading } from '../../model/survey.ts'
import { median } from './median.ts'

/** A reading that its neighbours do not bear out, by how much (m), and whether it can be true. */
export type Outlier<R extends Reading> = {
  readonly reading: R
  readonly off: number
  readonly credible: boolean
}

/** Steeper across the track than any oval is banked, or than a level is misread by little. */
const steepest = 0.3

/** How far a level may lie off the line through its station, and no surface lies further; m. */
const [oddLevel, wrongLevel] = [0.1, 0.3]

/** How far three readings may bend, m, and two may fall otherwise than the track mostly does. */
const [oddBend, oddSlope] = [0.12, 0.1]

/** Rise for each meter between any two readings of a station. */
const slopes = (readings: readonly Reading[]): number[] =>
  readings.flatMap((a, i) =>
    readings
      .slice(i + 1)
      .flatMap((b) => (b.offset === a.offset ? [] : [(b.value - a.value) / (b.offset - a.offset)])),
  )

/**
 * Rise for each meter outward of one station: the median of the slopes between all pairs, which one
 * wrong reading does not move where there are four or more (Theil 1950, Sen 1968; from memory).
 */
export const medianSlope = (readings: readonly Reading[]): number => median(slopes(readings))

/** How far each reading lies off the middle line of its station, m. */
function offLine<R extends Reading>(readings: readonly R[]): readonly Outlier<R>[] {
  // Three readings cannot outvote a wrong one: the middle level decides there.
  const slope = readings.length > 3 ? medianSlope(readings) : 0
  const lines = readings.map((r) => r.value - slope * r.offset)
  const level = median(lines)
  return readings.map((reading, i) => {
    const off = (lines[i] ?? level) - level
    return { reading, off, credible: Math.abs(off) < wrongLevel }
  })
}

const largest = <R extends Reading>(found: readonly Outlier<R>[]): Outlier<R> | undefined =>
  found.reduce<Outlier<R> | undefined>(
    (worst, o) => (worst && Math.abs(worst.off) >= Math.abs(o.off) ? worst : o),
    undefined,
  )

/** The middle one of three readings, with how far it lies off the line through the outer two. */
function bent<R extends Reading>(station: readonly R[]): readonly Outlier<R>[] {
  const [inner, reading, outer] = station
  if (!inner || !reading || !outer || station.length !== 3) return []
  const along = (reading.offset - inner.offset) / (outer.offset - inner.offset)
  const off = reading.value - inner.value - along * (outer.value - inner.value)
  return Math.abs(off) > oddBend ? [{ reading, off, credible: Math.abs(off) < wrongLevel }] : []
}

/** Levels that lie off the others of their station; at most one a station, the worst. */
export function levelOutliers<R extends Reading>(readings: readonly R[]): readonly Outlier<R>[] {
  const stations = byStation(readings)
  const usual = median(stations.map(({ readings: station }) => medianSlope(station)))
  return stations.flatMap(({ readings: station }) => {
    const worst = largest(offLine(station))
    if (!worst) return []
    if (station.length > 3) return Math.abs(worst.off) > oddLevel ? [worst] : []
    if (slopes(station).some((s) => Math.abs(s) > steepest)) return [{ ...worst, credible: false }]
    const steep = station.length === 2 && Math.abs(medianSlope(station) - usual) > oddSlope
    return steep ? [{ ...worst, credible: true }] : bent(station)
  })
}

/** Spread of the middle half, as a standard deviation, and the least that counts as spread; m. */
const [perDeviation, leastSpread] = [1.4826, 0.003]

/** Deviations beyond which a depth is asked about, and a depth that no cushion has; m. */
const [asked, deepest] = [8, 0.15]

/** The same against the readings around it, and the least that is asked about; m. */
const [askedNearby, leastNearby] = [4, 0.03]

/** The middle depth of a station and the two beside it. */
function depthsNearby(readings: readonly Reading[]): ReadonlyMap<number, number> {
  const stations = byStation(readings)
  return new Map(
    stations.map(({ station }, i) => {
      const around = [i - 1, i, i + 1].flatMap(
        (k) => stations.at(k % stations.length)?.readings ?? [],
      )
      return [station, median(around.map((r) => r.value))]
    }),
  )
}

/**
 * Depths far from the middle one of their day (median absolute deviation), or from those around
 * them.
 */
export function depthOutliers<R extends Reading>(readings: readonly R[]): readonly Outlier<R>[] {
  const middle = median(readings.map((r) => r.value))
  const spread = Math.max(
    leastSpread,
    perDeviation * median(readings.map((r) => Math.abs(r.value - middle))),
  )
  const nearby = depthsNearby(readings)
  const odd = Math.max(leastNearby, askedNearby * spread)
  return readings.flatMap((reading) => {
    const off = reading.value - middle
    const lone = Math.abs(reading.value - (nearby.get(reading.station) ?? middle)) > odd
    return lone || Math.abs(off) > asked * spread
      ? [{ reading, off, credible: Math.abs(off) < deepest }]
      : []
  })
}

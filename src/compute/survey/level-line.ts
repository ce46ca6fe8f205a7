import type { Reading } from '../../model/survey.ts'

/**
 * The straight line that fits the levels of one station best: rise for each meter outward, and
 * level at the middle reading.
 */
export type LevelLine = {
  readonly slope: number
  readonly meanOffset: number
  readonly meanLevel: number /** Largest distance of a reading from the line, m. */
  readonly worst: number
}

/**
 * Fits a cross-fall to the levels of one station by least squares.
 * @param readings At least two at different offsets.
 * @throws RangeError when all offsets are the same.
 * @see geometry
 */
export function levelLine(readings: readonly Reading[]): LevelLine {
  const n = readings.length
  const meanOffset = readings.reduce((sum, r) => sum + r.offset, 0) / n
  const meanLevel = readings.reduce((sum, r) => sum + r.value, 0) / n
  const spread = readings.reduce((sum, r) => sum + (r.offset - meanOffset) ** 2, 0)
  if (!(spread > 0)) throw new RangeError('a cross-fall needs readings at two offsets')
  const slope =
    readings.reduce((sum, r) => sum + (r.offset - meanOffset) * (r.value - meanLevel), 0) / spread
  const worst = Math.max(
    ...readings.map((r) => Math.abs(r.value - (meanLevel + slope * (r.offset - meanOffset)))),
  )
  return { slope, meanOffset, meanLevel, worst }
}

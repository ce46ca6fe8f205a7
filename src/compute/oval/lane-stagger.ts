/**
 * How much farther a lap in one lane is than in the first, and so how far its start is set forward.
 * The first lane may be measured farther from its edge than the others.
 *
 *     2π ((lane − 1) × width + offset − offset of the first)
 *
 * @param lane Number of the lane, whole, from 1.
 * @param width Of a lane, m, above 0.
 * @param firstOffset Where the first lane is measured, m from its inside edge.
 * @param otherOffset Where the others are measured, m from their inside edge.
 * @returns m, not rounded; 0 in the first lane.
 * @throws RangeError for a lane that does not exist.
 * @see geometry
 */
export function laneStagger(
  lane: number,
  width: number,
  firstOffset: number,
  otherOffset: number,
): number {
  if (!(Number.isInteger(lane) && lane >= 1 && width > 0))
    throw new RangeError('lanes are counted from one')
  return lane === 1 ? 0 : 2 * Math.PI * ((lane - 1) * width + otherOffset - firstOffset)
}

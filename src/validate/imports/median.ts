/** The middle of some numbers, or the mean of the two in the middle. @param values At least one. */
export function median(values: readonly number[]): number {
  const sorted = values.toSorted((a, b) => a - b)
  const half = Math.floor(sorted.length / 2)
  const [low = Number.NaN, high = Number.NaN] = [sorted[half - 1], sorted[half]]
  return sorted.length % 2 === 1 ? high : (low + high) / 2
}

import { distance } from 'fastest-levenshtein'

/** The known name nearest to a misspelt one, when it is near enough to be what was meant. */
export function closest(name: string, known: readonly string[]): string | undefined {
  let best: string | undefined
  let least = Math.max(1, Math.floor(name.length / 3)) + 1
  for (const candidate of known) {
    const d = distance(name.toLowerCase(), candidate.toLowerCase())
    if (d < least) {
      least = d
      best = candidate
    }
  }
  return best
}

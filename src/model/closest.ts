import { distance } from 'fastest-levenshtein'

/** The known name nearest to a misspelt one, when it is near enough to be what was meant. */
function closest(name: string, known: readonly string[]): string | undefined {
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

/**
 * What to ask whoever wrote a name that nobody knows: `did you mean "seal"?`. Nothing where no
 * known name is near.
 */
export function didYouMean(name: string, known: readonly string[]): string | undefined {
  const near = closest(name, known)
  return near === undefined ? undefined : `did you mean "${near}"?`
}

/** More names than these are no help to anyone. */
const mostListed = 20

/** The same; where no known name is near, those that there are. */
export function didYouMeanOneOf(name: string, known: readonly string[]): string {
  const more = known.length > mostListed ? ', …' : ''
  return didYouMean(name, known) ?? `known: ${known.slice(0, mostListed).join(', ')}${more}`
}

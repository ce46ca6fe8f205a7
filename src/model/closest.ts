import { distance } from 'fastest-levenshtein'

/** A word with two letters that stand beside each other changed, in every way there is. */
const swapped = (word: string): readonly string[] =>
  [...word].slice(1).map((_, i) => word.slice(0, i) + word[i + 1] + word[i] + word.slice(i + 2))

/** The known name nearest to a misspelt one, when it is near enough to be what was meant. */
export function nearest(name: string, known: readonly string[]): string | undefined {
  const small = name.toLowerCase()
  const changed = new Set(swapped(small))
  let best: string | undefined
  // Of one or two letters, those that changed places tell; one changed letter makes another word.
  let least = Math.floor(name.length / 3) + 1
  for (const candidate of known) {
    // Two letters that changed places are one slip of the fingers, not two.
    const isSwapped = changed.has(candidate.toLowerCase())
    const d = isSwapped ? 1 : distance(small, candidate.toLowerCase())
    if (d < least || (isSwapped && best === undefined)) {
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
  const near = nearest(name, known)
  return near === undefined ? undefined : `did you mean "${near}"?`
}

/** More names than these are no help to anyone. */
const mostListed = 20

/** The same; where no known name is near, those that there are. */
export function didYouMeanOneOf(name: string, known: readonly string[]): string {
  const more = known.length > mostListed ? ', …' : ''
  return didYouMean(name, known) ?? `known: ${known.slice(0, mostListed).join(', ')}${more}`
}

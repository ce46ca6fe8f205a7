import { distance } from 'fastest-levenshtein'

/** Letters that two words have in common from the beginning. */
function sameLetters(a: string, b: string): number {
  let i = 0
  while (i < a.length && a[i] === b[i]) i++
  return i
}

/** Endings of one word are up to this long; so `harrow` is met in `harrowing`, in any language. */
const ending = 3

/** From so many letters on one may be wrong, and two. */
const [oneWrong, twoWrong] = [4, 8]

/** Numbers, also those of worksheets, are found as they are or not at all. */
const isNumber = (word: string): boolean => /\d/.test(word)

/**
 * How well a word of the manual fits one that is being typed: 1 the same, 0 not at all, as for every
 * word that begins with another letter.
 */
export function alike(typed: string, word: string): number {
  if (typed === word) return 1
  if (typed[0] !== word[0]) return 0
  if (isNumber(typed) || isNumber(word)) return 0
  const same = sameLetters(typed, word)
  // Typed up to here, or without the ending.
  if (same === typed.length && same >= 2)
    return word.length - same <= ending ? 0.9 : 0.5 + (0.3 * same) / word.length
  if (same >= 4 && typed.length - same <= ending && word.length - same <= ending) return 0.75
  return same === word.length && same >= 3 && typed.length - same <= ending ? 0.7 : 0
}

/** The same for a word that is misspelt. */
export function roughlyAlike(typed: string, word: string): number {
  const allowed = typed.length < twoWrong ? 1 : 2
  if (typed.length < oneWrong || Math.abs(typed.length - word.length) > allowed) return 0
  if (isNumber(typed) || isNumber(word)) return 0
  // A wrong first letter is rare, and makes another word of many a short one.
  if (typed.length < 6 && typed[0] !== word[0]) return 0
  const wrong = distance(typed, word)
  return wrong > allowed ? 0 : 0.7 - 0.1 * wrong
}

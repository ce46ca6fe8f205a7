import * as z from 'zod'
import { type Pattern, placesIn } from '../../../model/pattern.ts'
import { line } from '../text.ts'

/** Words without places for anything that varies. */
export const plain = line.refine((words) => placesIn(words).length === 0, {
  error: 'words without braces',
})

/**
 * One entry for each name and no other: a misspelt name in the code does not compile, a missing or
 * unknown one in the file is a fault with its line.
 */
export const entries = <const K extends string>(...names: readonly K[]) =>
  Object.fromEntries(names.map((name) => [name, plain])) as Record<K, typeof plain>

/** A group of words with these names. */
export const group = <const K extends string>(...names: readonly K[]) =>
  z.strictObject(entries(...names))

/** Words that hold each of these places: `holding('width')` for "{width} wide". */
export function holding<const K extends string>(...places: readonly K[]): z.ZodType<Pattern<K>> {
  const known: ReadonlySet<string> = new Set(places)
  const words = line.refine(
    (said) => {
      const found = placesIn(said)
      return places.every((p) => found.includes(p)) && found.every((p) => known.has(p))
    },
    { error: `words that hold ${places.map((p) => `{${p}}`).join(' and ')}` },
  )
  // What was found in the words is known of them from here on.
  return words as unknown as z.ZodType<Pattern<K>>
}

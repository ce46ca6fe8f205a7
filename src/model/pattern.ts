declare const holds: unique symbol

/**
 * Words with places for what varies: `{width} wide`. In another language the place may stand
 * elsewhere, so that words and values are put together nowhere but here.
 */
export type Pattern<K extends string> = string & { readonly [holds]: K }

/** One place of a pattern. Names of figures hold a dot and are no places. */
const place = /\{([a-z]+)\}/gi

/** The places that words have, each as often as it stands there. */
export const placesIn = (words: string): readonly string[] =>
  [...words.matchAll(place)].map((m) => m[1] ?? '')

/** A pattern with a value in each of its places. */
export const fill = <K extends string>(
  pattern: Pattern<K>,
  values: Readonly<Record<K, string | number>>,
): string => pattern.replace(place, (_, name: string) => String(values[name as K]))

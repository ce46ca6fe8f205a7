/**
 * What the search of the site finds: made with the pages, read in them. Both sides part words in
 * one way.
 */
export type SearchIndex = {
  /** What results are: "Procedure", "Worksheet" … */
  readonly kinds: readonly string[]
  readonly entries: readonly SearchEntry[]
  /** Every word that finds something, in order. */
  readonly words: readonly string[]
  /**
   * For each word the entries that have it, in order, each as two numbers: how many places after
   * the last one, and how much the word says of it.
   */
  readonly found: readonly (readonly number[])[]
  /** Words and phrases that mean the same, parted as in a query. */
  readonly same: readonly (readonly (readonly string[])[])[]
  /** Words that tell nothing. */
  readonly silent: readonly string[]
}

/** A result: where it leads, what it is (a place in the kinds), its title and lines of its text. */
export type SearchEntry = readonly [href: string, kind: number, title: string, ...lines: string[]]

/** Words of a text as they are searched: small letters; a worksheet's number such as `w-24` whole. */
export const searchWords = (text: string): readonly string[] =>
  text
    .toLowerCase()
    .replace(/['’]/g, '')
    .match(/\p{L}-\d+|\p{L}+|\d+/gu) ?? []

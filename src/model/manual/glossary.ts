import type { Text } from './text.ts'

export type GlossaryTerm = {
  readonly term: string
  readonly means: Text
  /** It stands in the field book too. */
  readonly pocket?: true | undefined
}

/**
 * A term of the index and its places in a binder, by their ids: first the main ones, then others in
 * the order of the book.
 */
export type TermPlaces = {
  readonly term: string
  readonly places: readonly { readonly place: string; readonly main: boolean }[]
}

import type { Text } from './text.ts'

export type GlossaryTerm = {
  readonly term: string
  readonly means: Text
  /** It stands in the field book too. */
  readonly pocket?: true | undefined
}

/**
 * Where a term of the glossary is used: procedures, and ids of places in them, at most one for each
 * part of a procedure. A term that is met throughout has no list.
 */
export type TermPlaces = {
  readonly term: string
  readonly procedures: readonly string[]
  readonly places: readonly string[]
  readonly throughout: boolean
}

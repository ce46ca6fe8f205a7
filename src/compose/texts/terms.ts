import type { GlossaryTerm } from '../../model/manual/glossary.ts'
import { type ComposeContext, itemsOf } from '../context.ts'

/** The glossary in alphabetical order. */
export const composeTerms = ({ library }: ComposeContext): readonly GlossaryTerm[] =>
  itemsOf(library.terms).toSorted((a, b) => a.term.localeCompare(b.term, 'en'))

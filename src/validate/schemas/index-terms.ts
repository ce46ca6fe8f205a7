import * as z from 'zod'
import { indexKinds } from '../../model/index-places.ts'
import { line } from './text.ts'

/** Where a term leads: a kind of thing and its id, such as `procedure:dust`. */
const target = z.string().regex(new RegExp(`^(?:${indexKinds.join('|')}):[a-z0-9-]+$`), {
  error: `a place such as "procedure:dust"; kinds are ${indexKinds.join(', ')}`,
})

const indexTerm = z.strictObject({
  term: line,
  /** Where most is said about it: printed first, in bold. */
  main: z.array(target).min(1),
  /** Words by which further pages are found; the term itself where it has none. */
  words: z.array(line).min(1).optional(),
})

/** What people look for in the index of a binder. */
export const indexTerms = z.strictObject({ terms: z.array(indexTerm).min(1) })

export type IndexEntry = z.infer<typeof indexTerm>

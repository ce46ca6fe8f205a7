import * as z from 'zod'
import { line } from './text.ts'

/** How the search of the site understands people. */
export const search = z.strictObject({
  /** Words and phrases for one thing, between commas. */
  same: z.array(line).min(1),
  /** Words that tell nothing, between commas. */
  silent: line,
})

export type SearchFile = z.infer<typeof search>

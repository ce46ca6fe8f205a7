import * as z from 'zod'
import type { Problem } from '../../model/problem.ts'
import type { SourceTree } from '../../read/read-yaml.ts'
import { checkSchema } from '../../validate/check-schema.ts'
import { pageWords } from './page.ts'
import { allPages } from './pages.ts'

/** Exactly the words that the pages ask for; other groups are none of their business. */
const schema = z.looseObject({
  pages: z.strictObject(Object.fromEntries(allPages.map((page) => [page.id, pageWords(page)]))),
})

/** Holds the pages of the site against the file of words: each has its title and what it asks for. */
export const checkPages = (words: SourceTree): readonly Problem[] =>
  checkSchema(words, schema).problems

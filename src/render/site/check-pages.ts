import * as z from 'zod'
import type { Problem } from '../../model/problem.ts'
import type { SourceTree } from '../../read/read-yaml.ts'
import { checkSchema } from '../../validate/check-schema.ts'
import type { TemplateSet } from '../text/templates.ts'
import { subjectsOfAll } from './check-subjects.ts'
import { familyTemplate, pageWords } from './page.ts'
import { home } from './pages/home.ts'
import { allPages, pageFamilies } from './pages.ts'

/** Exactly the words that the pages ask for; other groups are none of their business. */
const schema = z.looseObject({
  pages: z.strictObject(Object.fromEntries(allPages.map((page) => [page.id, pageWords(page)]))),
  subjects: subjectsOfAll,
})

/** A page without its template could not be made. */
export const checkPageTemplates = (templates: TemplateSet): readonly Problem[] =>
  [home.template, ...allPages.map(({ id }) => `site/${id}`), ...pageFamilies.map(familyTemplate)]
    .filter((name) => templates[name] === undefined)
    .map((name) => ({
      code: 'file/missing',
      severity: 'error',
      message: 'a page of the site has no template',
      place: { file: `templates/${name}.hbs`, line: 1, column: 1, length: 1 },
    }))

/** Holds the pages of the site against the file of words: each has its title and what it asks for. */
export const checkPages = (words: SourceTree): readonly Problem[] =>
  checkSchema(words, schema).problems

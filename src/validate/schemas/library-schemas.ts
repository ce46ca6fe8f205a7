import type * as z from 'zod'
import type { LibraryTrees } from '../check-library.ts'
import { calendars } from './calendars.ts'
import { cards } from './cards.ts'
import { chooser } from './chooser.ts'
import { facts } from './facts.ts'
import { fieldBook } from './field-book.ts'
import { form } from './form.ts'
import { forms } from './forms.ts'
import { indexTerms } from './index-terms.ts'
import { lessons } from './lessons.ts'
import { cautions, chapter, findings, glossary, reckoners, sections, symptoms } from './library.ts'
import { plans } from './plans.ts'
import { procedure } from './procedure.ts'
import { search } from './search.ts'
import { today } from './today.ts'
import { words } from './words.ts'
import { worksheets } from './worksheets.ts'

/** The schema of each file of the library. */
export const librarySchemas = {
  procedures: procedure,
  chapters: chapter,
  cautions,
  symptoms,
  chooser,
  sections,
  glossary,
  index: indexTerms,
  reckoners,
  findings,
  plans,
  calendars,
  forms,
  form,
  cards,
  'field-book': fieldBook,
  lessons,
  search,
  today,
  words,
  worksheets,
  facts,
} satisfies Readonly<Record<keyof LibraryTrees, z.ZodType>>

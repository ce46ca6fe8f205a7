import type { Words } from '../../../validate/schemas/words.ts'
import type { SiteContext } from '../page.ts'

/** What a result is, as the file of words calls it. */
export const kindWords = (words: Words) => ({
  procedure: words.search.procedure,
  symptom: words.search.symptom,
  plan: words.search.plan,
  worksheet: words.search.worksheet,
  reckoner: words.search.reckoner,
  form: words.search.form,
  hazard: words.search.hazard,
  finding: words.search.finding,
  term: words.search.term,
  chapter: words.search.chapter,
  page: words.search.page,
  paper: words.search.paper,
})

type SearchKind = keyof ReturnType<typeof kindWords>

/** Something that can be found, in plain words. */
export type Findable = {
  readonly kind: SearchKind
  /** Where it stands, from the first page. */
  readonly href: string
  readonly title: string
  /** One of these is shown below the title. */
  readonly lines: readonly string[]
  /** Further words that lead to it. */
  readonly text: readonly string[]
}

export type FindablesOf = (site: SiteContext) => readonly Findable[]

/** Letters and digits of a term, for the id of its place. */
export const termPlace = (term: string): string =>
  `term-${(term.toLowerCase().match(/[\p{L}\d]+/gu) ?? []).join('-')}`

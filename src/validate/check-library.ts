import * as z from 'zod'
import type { Problem, Result } from '../model/problem.ts'
import type { Path, SourceTree } from '../read/read-yaml.ts'
import { calendarReferences } from './calendar-references.ts'
import { checkSchema } from './check-schema.ts'
import { chooserReferences } from './chooser-references.ts'
import { fieldBookReferences } from './field-book-references.ts'
import { findingReferences } from './finding-references.ts'
import { indexReferences } from './index-references.ts'
import { libraryReferences } from './library-references.ts'
import { planReferences } from './plan-references.ts'
import { type Calendar, calendars } from './schemas/calendars.ts'
import { type Card, cards } from './schemas/cards.ts'
import { type ChooserFile, chooser } from './schemas/chooser.ts'
import { type FactsFile, facts } from './schemas/facts.ts'
import { type FieldBookFile, fieldBook } from './schemas/field-book.ts'
import { type FormFile, form } from './schemas/form.ts'
import { type Form, forms } from './schemas/forms.ts'
import { type IndexEntry, indexTerms } from './schemas/index-terms.ts'
import { type Course, lessons } from './schemas/lessons.ts'
import {
  type Caution,
  type Chapter,
  cautions,
  chapter,
  type FindingText,
  findings,
  glossary,
  type Reckoner,
  reckoners,
  type Symptom,
  sections,
  symptoms,
} from './schemas/library.ts'
import { plans, type Schedule } from './schemas/plans.ts'
import { type Procedure, procedure } from './schemas/procedure.ts'
import { type SearchFile, search } from './schemas/search.ts'
import { type TodayFile, today } from './schemas/today.ts'
import { type Words, words as wordsSchema } from './schemas/words.ts'
import { type WorksheetFile, worksheets } from './schemas/worksheets.ts'
import { todayReferences } from './today-references.ts'

/** The files of the library as they were read; every one has passed the YAML reader. */
export type LibraryTrees = {
  readonly procedures: readonly SourceTree[]
  readonly chapters: readonly SourceTree[]
  readonly cautions: SourceTree
  readonly symptoms: SourceTree
  readonly chooser: SourceTree
  readonly sections: SourceTree
  readonly glossary: SourceTree
  readonly index: SourceTree
  readonly reckoners: SourceTree
  readonly findings: SourceTree
  readonly plans: SourceTree
  readonly calendars: SourceTree
  readonly forms: SourceTree
  readonly form: SourceTree
  readonly cards: SourceTree
  readonly 'field-book': SourceTree
  readonly lessons: SourceTree
  readonly search: SourceTree
  readonly today: SourceTree
  readonly words: SourceTree
  readonly worksheets: readonly SourceTree[]
  readonly facts: SourceTree
}

/** Something of the library with the file that it stands in and the schema that it has passed. */
export type Sourced<T> = {
  readonly value: T
  readonly tree: SourceTree
  readonly path: Path
  readonly schema: z.ZodType
}

/** A shelf of the binder. */
type Section = {
  readonly id: string
  readonly title: string
  readonly about: string
  readonly front?: true | undefined
}

type Term = { readonly term: string; readonly means: string; readonly pocket?: true | undefined }

/** All procedures and what they share, checked. */
export type Library = {
  readonly procedures: readonly Sourced<Procedure>[]
  readonly chapters: readonly Sourced<Chapter>[]
  readonly cautions: readonly Sourced<Caution>[]
  readonly symptoms: readonly Sourced<Symptom>[]
  /** One file; a list as all others. */
  readonly chooser: readonly Sourced<ChooserFile>[]
  readonly sections: readonly Sourced<Section>[]
  readonly terms: readonly Sourced<Term>[]
  readonly indexTerms: readonly Sourced<IndexEntry>[]
  readonly reckoners: readonly Sourced<Reckoner>[]
  readonly findings: readonly Sourced<FindingText>[]
  readonly schedules: readonly Sourced<Schedule>[]
  readonly calendars: readonly Sourced<Calendar>[]
  readonly forms: readonly Sourced<Form>[]
  /** The page on which a facility file is filled in: one file; a list as all others. */
  readonly form: readonly Sourced<FormFile>[]
  readonly cards: readonly Sourced<Card>[]
  /** One file; a list as all others. */
  readonly fieldBook: readonly Sourced<FieldBookFile>[]
  readonly courses: readonly Sourced<Course>[]
  /** One file; a list as all others. */
  readonly search: readonly Sourced<SearchFile>[]
  /** One file; a list as all others. */
  readonly today: readonly Sourced<TodayFile>[]
  readonly worksheets: readonly Sourced<WorksheetFile>[]
  readonly facts: readonly Sourced<FactsFile>[]
  readonly words: Words
  /** The same with its file. */
  readonly wordsFile: Sourced<Words>
}

type Listed<T> = { readonly list: readonly Sourced<T>[]; readonly problems: readonly Problem[] }

/** What a schema makes of a file. */
type Check = (tree: SourceTree, schema: z.ZodType) => Result<unknown>

function listOf<T>(
  check: Check,
  tree: SourceTree,
  schema: z.ZodObject<Readonly<Record<string, z.ZodArray<z.ZodType>>>>,
  key: string,
): Listed<T> {
  const parsed = check(tree, schema)
  const items = (parsed.value as Readonly<Record<string, readonly T[]>> | undefined)?.[key] ?? []
  const item = schema.shape[key]?.element ?? z.never()
  return {
    list: items.map((value, i) => ({ value, tree, path: [key, i], schema: item })),
    problems: parsed.problems,
  }
}

function each<T>(check: Check, trees: readonly SourceTree[], schema: z.ZodType): Listed<T> {
  const parsed = trees.map((tree) => ({ tree, result: check(tree, schema) }))
  return {
    list: parsed.flatMap(({ tree, result }) =>
      result.value === undefined ? [] : [{ value: result.value as T, tree, path: [], schema }],
    ),
    problems: parsed.flatMap(({ result }) => result.problems),
  }
}

/** One id must not name two things. */
function duplicateIds(list: readonly Sourced<{ readonly id: string }>[], what: string): Problem[] {
  const seen = new Map<string, Sourced<{ readonly id: string }>>()
  return list.flatMap((item) => {
    const first = seen.get(item.value.id)
    if (!first) {
      seen.set(item.value.id, item)
      return []
    }
    const place = first.tree.placeOf([...first.path, 'id'])
    return [
      item.tree.problem(
        item.tree.placeOf([...item.path, 'id']),
        'ref/duplicate-id',
        `${what} "${item.value.id}" exists already`,
        { hint: `the first stands at ${place.file}:${place.line}` },
      ),
    ]
  })
}

/** What the library is made of, each part against its schema. */
function readParts(trees: LibraryTrees, check: Check) {
  return {
    procedures: each<Procedure>(check, trees.procedures, procedure),
    chapters: each<Chapter>(check, trees.chapters, chapter),
    cautions: listOf<Caution>(check, trees.cautions, cautions, 'cautions'),
    symptoms: listOf<Symptom>(check, trees.symptoms, symptoms, 'symptoms'),
    chooser: each<ChooserFile>(check, [trees.chooser], chooser),
    sections: listOf<Section>(check, trees.sections, sections, 'sections'),
    terms: listOf<Term>(check, trees.glossary, glossary, 'terms'),
    indexTerms: listOf<IndexEntry>(check, trees.index, indexTerms, 'terms'),
    reckoners: listOf<Reckoner>(check, trees.reckoners, reckoners, 'reckoners'),
    findings: listOf<FindingText>(check, trees.findings, findings, 'findings'),
    schedules: listOf<Schedule>(check, trees.plans, plans, 'plans'),
    calendars: listOf<Calendar>(check, trees.calendars, calendars, 'calendars'),
    forms: listOf<Form>(check, trees.forms, forms, 'forms'),
    form: each<FormFile>(check, [trees.form], form),
    cards: listOf<Card>(check, trees.cards, cards, 'cards'),
    fieldBook: each<FieldBookFile>(check, [trees['field-book']], fieldBook),
    courses: listOf<Course>(check, trees.lessons, lessons, 'courses'),
    search: each<SearchFile>(check, [trees.search], search),
    today: each<TodayFile>(check, [trees.today], today),
    worksheets: each<WorksheetFile>(check, trees.worksheets, worksheets),
    facts: each<FactsFile>(check, [trees.facts], facts),
  }
}

type Parts = ReturnType<typeof readParts>

/** Parts whose entries have ids, with what one of them is called. */
const called = {
  procedures: 'procedure',
  chapters: 'chapter',
  cautions: 'caution',
  symptoms: 'symptom',
  sections: 'section',
  reckoners: 'reckoner',
  findings: 'finding',
  schedules: 'plan',
  calendars: 'calendar',
  forms: 'form',
  cards: 'card',
  courses: 'course',
} as const satisfies Partial<Record<keyof Parts, string>>

const namedTwice = (parts: Parts): Problem[] =>
  (Object.keys(called) as (keyof typeof called)[]).flatMap((part) =>
    duplicateIds(parts[part].list, called[part]),
  )

const listsOf = (parts: Parts): Omit<Library, 'words' | 'wordsFile'> => ({
  procedures: parts.procedures.list,
  chapters: parts.chapters.list,
  cautions: parts.cautions.list,
  symptoms: parts.symptoms.list,
  chooser: parts.chooser.list,
  sections: parts.sections.list,
  terms: parts.terms.list,
  indexTerms: parts.indexTerms.list,
  reckoners: parts.reckoners.list,
  findings: parts.findings.list,
  schedules: parts.schedules.list,
  calendars: parts.calendars.list,
  forms: parts.forms.list,
  form: parts.form.list,
  cards: parts.cards.list,
  fieldBook: parts.fieldBook.list,
  courses: parts.courses.list,
  search: parts.search.list,
  today: parts.today.list,
  worksheets: parts.worksheets.list,
  facts: parts.facts.list,
})

/** A library whose files have been read and held against their schemas. */
function withWords(
  parts: Parts,
  words: Result<unknown>,
  tree: SourceTree,
): Pick<Result<Library>, 'value'> {
  if (!words.value) return { value: undefined }
  const value = words.value as Words
  const wordsFile = { value, tree, path: [], schema: wordsSchema }
  return { value: { ...listsOf(parts), words: value, wordsFile } }
}

/**
 * Checks the library: each file against its schema, then every reference between files.
 * @returns also what the schemas made of the files, from which `knownLibrary` makes the same library.
 */
export function checkLibrary(
  trees: LibraryTrees,
  sourceIds: ReadonlySet<string>,
): Result<Library> & { readonly values: readonly unknown[] } {
  const values: unknown[] = []
  const check: Check = (tree, schema) => {
    const checked = checkSchema(tree, schema)
    values.push(checked.value)
    return checked
  }
  const parts = readParts(trees, check)
  const checkedWords = check(trees.words, wordsSchema)
  const lists = listsOf(parts)
  const ofSchemas = [...Object.values(parts), checkedWords].flatMap((p) => p.problems)
  // A file that failed its schema is missing from the lists, so references to it would be false
  // alarms.
  const references =
    ofSchemas.length > 0
      ? []
      : [
          ...libraryReferences(lists, sourceIds),
          ...chooserReferences(lists),
          ...indexReferences(lists),
          ...planReferences(lists),
          ...findingReferences(lists),
          ...lists.today.flatMap((item) => todayReferences(item, lists)),
          ...calendarReferences(lists),
          ...lists.fieldBook.flatMap((book) => fieldBookReferences(book, lists)),
        ]
  const problems = [...ofSchemas, ...namedTwice(parts), ...references]
  return { ...withWords(parts, checkedWords, trees.words), problems, values }
}

/**
 * A library that has been checked before.
 * @param trees The same files.
 * @param values What `checkLibrary` said that their schemas made of them.
 */
export function knownLibrary(trees: LibraryTrees, values: readonly unknown[]): Library | undefined {
  const rest = values.values()
  const known: Check = () => ({ value: rest.next().value, problems: [] })
  const parts = readParts(trees, known)
  return withWords(parts, known(trees.words, wordsSchema), trees.words).value
}

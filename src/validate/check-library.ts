import * as z from 'zod'
import { closest } from '../model/closest.ts'
import type { Problem, Result } from '../model/problem.ts'
import type { Path, SourceTree } from '../read/read-yaml.ts'
import { checkSchema } from './check-schema.ts'
import { type Card, cards } from './schemas/cards.ts'
import { type Form, forms } from './schemas/forms.ts'
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
import { type Words, words } from './schemas/words.ts'

/** The files of the library as they were read; every one has passed the YAML reader. */
export type LibraryTrees = {
  readonly procedures: readonly SourceTree[]
  readonly chapters: readonly SourceTree[]
  readonly cautions: SourceTree
  readonly symptoms: SourceTree
  readonly sections: SourceTree
  readonly glossary: SourceTree
  readonly reckoners: SourceTree
  readonly findings: SourceTree
  readonly plans: SourceTree
  readonly forms: SourceTree
  readonly cards: SourceTree
  readonly words: SourceTree
}

/** Something of the library with the file that it stands in and the schema that it has passed. */
export type Sourced<T> = {
  readonly value: T
  readonly tree: SourceTree
  readonly path: Path
  readonly schema: z.ZodType
}

/** All procedures and what they share, checked. */
export type Library = {
  readonly procedures: readonly Sourced<Procedure>[]
  readonly chapters: readonly Sourced<Chapter>[]
  readonly cautions: readonly Sourced<Caution>[]
  readonly symptoms: readonly Sourced<Symptom>[]
  readonly sections: readonly Sourced<{ id: string; title: string; about: string }>[]
  readonly terms: readonly Sourced<{ term: string; means: string }>[]
  readonly reckoners: readonly Sourced<Reckoner>[]
  readonly findings: readonly Sourced<FindingText>[]
  readonly schedules: readonly Sourced<Schedule>[]
  readonly forms: readonly Sourced<Form>[]
  readonly cards: readonly Sourced<Card>[]
  readonly words: Words
}

type Listed<T> = { readonly list: readonly Sourced<T>[]; readonly problems: readonly Problem[] }

function listOf<T>(
  tree: SourceTree,
  schema: z.ZodObject<Readonly<Record<string, z.ZodArray<z.ZodType>>>>,
  key: string,
): Listed<T> {
  const parsed = checkSchema(tree, schema)
  const items = (parsed.value as Readonly<Record<string, readonly T[]>> | undefined)?.[key] ?? []
  const item = schema.shape[key]?.element ?? z.never()
  return {
    list: items.map((value, i) => ({ value, tree, path: [key, i], schema: item })),
    problems: parsed.problems,
  }
}

function each<T>(trees: readonly SourceTree[], schema: z.ZodType): Listed<T> {
  const parsed = trees.map((tree) => ({ tree, result: checkSchema(tree, schema) }))
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

type Names = { readonly what: string; readonly ids: ReadonlySet<string> }

const names = (what: string, list: readonly Sourced<{ readonly id: string }>[]): Names => ({
  what,
  ids: new Set(list.map((i) => i.value.id)),
})

function checkRef(
  item: Sourced<unknown>,
  path: Path,
  id: string | undefined,
  target: Names,
): Problem[] {
  if (id === undefined || target.ids.has(id)) return []
  const near = closest(id, [...target.ids])
  const at = [...item.path, ...path]
  return [
    item.tree.problem(item.tree.placeOf(at), 'ref/missing', `there is no ${target.what} "${id}"`, {
      hint: near ? `did you mean "${near}"?` : `known: ${[...target.ids].slice(0, 12).join(', ')}`,
    }),
  ]
}

type Targets = {
  readonly procedures: Names
  readonly cautions: Names
  readonly symptoms: Names
  readonly sections: Names
  readonly reckoners: Names
  readonly sources: Names
}

function procedureRefs(item: Sourced<Procedure>, t: Targets): Problem[] {
  const p = item.value
  const methods: Names = {
    what: 'method in this procedure',
    ids: new Set(p.methods.map((m) => m.id)),
  }
  const list = (path: Path, ids: readonly string[] | undefined, target: Names): Problem[] =>
    (ids ?? []).flatMap((id, i) => checkRef(item, [...path, i], id, target))
  return [
    ...checkRef(item, ['section'], p.section, t.sections),
    ...checkRef(item, ['next'], p.next, t.procedures),
    ...list(['symptoms'], p.symptoms, t.symptoms),
    ...list(['cautions'], p.cautions, t.cautions),
    ...list(['references'], p.references, t.sources),
    ...list(['reckoners'], p.reckoners, t.reckoners),
    ...list(['sheet', 'cautions'], p.sheet.cautions, t.cautions),
    ...list(['sheet', 'methods'], p.sheet.methods, methods),
    ...checkRef(item, ['sheet', 'reckoner'], p.sheet.reckoner, t.reckoners),
    ...p.background.flatMap((b, i) =>
      checkRef(item, ['background', i, 'source'], b.source, t.sources),
    ),
    ...p.failures.flatMap((f, i) =>
      checkRef(item, ['failures', i, 'procedure'], f.procedure, t.procedures),
    ),
    ...(p.branches ?? []).flatMap((b, i) => [
      ...checkRef(item, ['branches', i, 'method'], b.method, methods),
      ...checkRef(item, ['branches', i, 'procedure'], b.procedure, t.procedures),
    ]),
    ...p.methods.flatMap((m, i) =>
      m.steps.flatMap((s, j) =>
        list(['methods', i, 'steps', j, 'cautions'], s.cautions, t.cautions),
      ),
    ),
    ...p.training.questions.flatMap((q, i) =>
      q.right > q.choices.length
        ? [
            item.tree.problem(
              item.tree.placeOf(['training', 'questions', i, 'right']),
              'schema/choice',
              `there is no choice ${q.right}`,
              { hint: `there are ${q.choices.length} choices` },
            ),
          ]
        : [],
    ),
  ]
}

const cardRefs = (item: Sourced<Card>, t: Targets): Problem[] => [
  ...item.value.cautions.flatMap((id, i) => checkRef(item, ['cautions', i], id, t.cautions)),
  ...(item.value.reckoners ?? []).flatMap((id, i) =>
    checkRef(item, ['reckoners', i], id, t.reckoners),
  ),
]

/** Checks the library: each file against its schema, then every reference between files. */
export function checkLibrary(trees: LibraryTrees, sourceIds: ReadonlySet<string>): Result<Library> {
  const procedures = each<Procedure>(trees.procedures, procedure)
  const chapters = each<Chapter>(trees.chapters, chapter)
  const cautionList = listOf<Caution>(trees.cautions, cautions, 'cautions')
  const symptomList = listOf<Symptom>(trees.symptoms, symptoms, 'symptoms')
  const sectionList = listOf<{ id: string; title: string; about: string }>(
    trees.sections,
    sections,
    'sections',
  )
  const terms = listOf<{ term: string; means: string }>(trees.glossary, glossary, 'terms')
  const reckonerList = listOf<Reckoner>(trees.reckoners, reckoners, 'reckoners')
  const findingList = listOf<FindingText>(trees.findings, findings, 'findings')
  const scheduleList = listOf<Schedule>(trees.plans, plans, 'plans')
  const formList = listOf<Form>(trees.forms, forms, 'forms')
  const cardList = listOf<Card>(trees.cards, cards, 'cards')
  const wordList = checkSchema(trees.words, words)
  const schemaProblems = [
    procedures,
    chapters,
    cautionList,
    symptomList,
    sectionList,
    terms,
    reckonerList,
    findingList,
    scheduleList,
    formList,
    cardList,
    wordList,
  ].flatMap((l) => l.problems)
  const t: Targets = {
    procedures: names('procedure', procedures.list),
    cautions: names('caution', cautionList.list),
    symptoms: names('symptom', symptomList.list),
    sections: names('section', sectionList.list),
    reckoners: names('reckoner', reckonerList.list),
    sources: { what: 'source', ids: sourceIds },
  }
  // A file that failed its schema is missing from the lists, so references to it would be false
  // alarms.
  const refs =
    schemaProblems.length > 0
      ? []
      : [
          ...procedures.list.flatMap((item) => procedureRefs(item, t)),
          ...cautionList.list.flatMap((item) =>
            item.value.sources.flatMap((id, i) => checkRef(item, ['sources', i], id, t.sources)),
          ),
          ...symptomList.list.flatMap((item) =>
            item.value.causes.flatMap((c, i) =>
              checkRef(item, ['causes', i, 'procedure'], c.procedure, t.procedures),
            ),
          ),
          ...cardList.list.flatMap((item) => cardRefs(item, t)),
        ]
  const problems = [
    ...schemaProblems,
    ...duplicateIds(procedures.list, 'procedure'),
    ...duplicateIds(chapters.list, 'chapter'),
    ...duplicateIds(cautionList.list, 'caution'),
    ...duplicateIds(symptomList.list, 'symptom'),
    ...duplicateIds(sectionList.list, 'section'),
    ...duplicateIds(reckonerList.list, 'reckoner'),
    ...duplicateIds(findingList.list, 'finding'),
    ...duplicateIds(scheduleList.list, 'plan'),
    ...duplicateIds(formList.list, 'form'),
    ...duplicateIds(cardList.list, 'card'),
    ...refs,
  ]
  if (!wordList.value) return { value: undefined, problems }
  const value: Library = {
    procedures: procedures.list,
    chapters: chapters.list,
    cautions: cautionList.list,
    symptoms: symptomList.list,
    sections: sectionList.list,
    terms: terms.list,
    reckoners: reckonerList.list,
    findings: findingList.list,
    schedules: scheduleList.list,
    forms: formList.list,
    cards: cardList.list,
    words: wordList.value,
  }
  return { value, problems }
}

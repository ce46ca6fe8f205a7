import { didYouMeanOneOf } from '../model/closest.ts'
import type { Problem } from '../model/problem.ts'
import type { Path } from '../read/read-yaml.ts'
import type { Library, Sourced } from './check-library.ts'
import type { FieldBookFile, FieldBookPart } from './schemas/field-book.ts'

type Lists = Omit<Library, 'words' | 'wordsFile'>

type Book = Sourced<FieldBookFile>

const idsOf = (list: readonly Sourced<{ readonly id: string }>[]): readonly string[] =>
  list.map((i) => i.value.id)

/** A name that is none of those that there are. */
function unknown(
  book: Book,
  path: Path,
  name: string | undefined,
  what: string,
  names: readonly string[],
): Problem[] {
  if (name === undefined || names.includes(name)) return []
  const place = book.tree.placeOf([...book.path, ...path])
  return [
    book.tree.problem(place, 'ref/missing', `there is no ${what} "${name}"`, {
      hint: didYouMeanOneOf(name, names),
    }),
  ]
}

type Many = readonly [entry: 'methods' | 'tables' | 'cautions' | 'symptoms', what: string]

/** The names that each list of a part may hold. */
function listed(part: FieldBookPart, library: Lists): ReadonlyMap<Many, readonly string[]> {
  const procedure = library.procedures.find((p) => p.value.id === part.procedure)?.value
  const plan = library.schedules.find((s) => s.value.id === part.plan)?.value
  return new Map<Many, readonly string[]>([
    [['methods', 'method in this procedure'], procedure?.methods.map((m) => m.id) ?? []],
    [['tables', 'table in this plan'], plan?.tables.map((t) => t.id) ?? []],
    [['cautions', 'caution'], idsOf(library.cautions)],
    [['symptoms', 'symptom'], idsOf(library.symptoms)],
  ])
}

/** What of a procedure is asked for and not there. */
function emptyShows(book: Book, path: Path, part: FieldBookPart, library: Lists): Problem[] {
  const procedure = library.procedures.find((p) => p.value.id === part.procedure)?.value
  if (!procedure) return []
  const lacks = {
    drawing: procedure.sheet.drawing === undefined,
    figures: procedure.sheet.figures.length === 0,
    look: (procedure.branches ?? []).length === 0,
    cautions: (procedure.cautions ?? []).length === 0,
  }
  return (part.show ?? []).flatMap((show, i) =>
    show in lacks && lacks[show as keyof typeof lacks]
      ? [
          book.tree.problem(
            book.tree.placeOf([...book.path, ...path, 'show', i]),
            'ref/missing',
            `the procedure "${procedure.id}" has no "${show}"`,
            { hint: 'leave it out, or write it there' },
          ),
        ]
      : [],
  )
}

function partRefs(book: Book, path: Path, part: FieldBookPart, library: Lists): Problem[] {
  const single = [
    ['procedure', 'procedure', idsOf(library.procedures)],
    ['plan', 'plan', idsOf(library.schedules)],
    ['reckoner', 'reckoner', idsOf(library.reckoners)],
    ['card', 'card', idsOf(library.cards)],
    ['chapter', 'chapter', idsOf(library.chapters)],
  ] as const
  const many = [...listed(part, library)].flatMap(([[entry, what], names]) =>
    (part[entry] ?? []).flatMap((name, i) => unknown(book, [...path, entry, i], name, what, names)),
  )
  const wrong = single.flatMap(([entry, what, names]) =>
    unknown(book, [...path, entry], part[entry], what, names),
  )
  // Methods and tables of what does not exist would be false alarms.
  return wrong.length > 0 ? wrong : [...many, ...emptyShows(book, path, part, library)]
}

/** Lists of pages of the file. */
const lists = ['pages', 'handout'] as const

function twice(book: Book, list: (typeof lists)[number]): Problem[] {
  const seen = new Set<string>()
  return book.value[list].flatMap((page, i) => {
    if (!seen.has(page.id)) {
      seen.add(page.id)
      return []
    }
    const place = book.tree.placeOf([...book.path, list, i, 'id'])
    return [
      book.tree.problem(place, 'ref/duplicate-id', `page "${page.id}" exists already`, {
        hint: 'give it another id',
      }),
    ]
  })
}

/** Whatever the field book takes and does not find. */
export function fieldBookReferences(book: Book, library: Lists): Problem[] {
  return [
    ...lists.flatMap((list) => [
      ...twice(book, list),
      ...book.value[list].flatMap((page, i) =>
        page.parts.flatMap((part, j) => partRefs(book, [list, i, 'parts', j], part, library)),
      ),
    ]),
    ...book.value['read-first'].flatMap((first, i) =>
      partRefs(book, ['read-first', i], first, library),
    ),
  ]
}

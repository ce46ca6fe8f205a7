import { didYouMeanOneOf } from '../model/closest.ts'
import { type IndexKind, indexPages, indexTarget } from '../model/index-places.ts'
import type { Problem } from '../model/problem.ts'
import type { Library, Sourced } from './check-library.ts'
import type { IndexEntry } from './schemas/index-terms.ts'

type Named = readonly Sourced<{ readonly id: string }>[]

/** What the index leads to, and the index. */
type Lists = Readonly<
  Record<'procedures' | 'symptoms' | 'schedules' | 'reckoners' | 'chapters' | 'cautions', Named>
> &
  Pick<Library, 'indexTerms'>

const idsOf = (list: Named): readonly string[] => list.map((i) => i.value.id)

const idsByKind = (library: Lists): Readonly<Record<IndexKind, readonly string[]>> => ({
  procedure: idsOf(library.procedures),
  hazard: idsOf(library.cautions),
  symptom: idsOf(library.symptoms),
  plan: idsOf(library.schedules),
  reckoner: idsOf(library.reckoners),
  chapter: idsOf(library.chapters),
  page: indexPages,
})

/** Terms of the index that lead nowhere, and those that stand in it twice. */
export function indexReferences(library: Lists): Problem[] {
  const ids = idsByKind(library)
  const seen = new Set<string>()
  const twice = ({ tree, path, value }: Sourced<IndexEntry>): Problem[] => {
    if (!seen.has(value.term)) {
      seen.add(value.term)
      return []
    }
    const place = tree.placeOf([...path, 'term'])
    return [
      tree.problem(place, 'ref/duplicate-id', `"${value.term}" is in the index already`, {
        hint: 'put its places there',
      }),
    ]
  }
  return library.indexTerms.flatMap((item) => [
    ...twice(item),
    ...item.value.main.flatMap((written, i) => {
      const { kind, id } = indexTarget(written)
      if (ids[kind].includes(id)) return []
      const place = item.tree.placeOf([...item.path, 'main', i])
      return [
        item.tree.problem(place, 'ref/missing', `there is no ${kind} "${id}"`, {
          hint: didYouMeanOneOf(id, ids[kind]),
        }),
      ]
    }),
  ])
}

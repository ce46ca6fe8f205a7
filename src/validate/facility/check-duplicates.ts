import type { Problem } from '../../model/problem.ts'
import type { ParsedFacility } from './parsed-facility.ts'

/** No machine, race day or month of a facility stands in its list twice. */
export function checkDuplicates({ file, tree }: ParsedFacility): Problem[] {
  const lists = [
    { path: 'equipment', what: 'machine', ids: file.equipment?.map((m) => m.id) ?? [] },
    { path: 'race-days', what: 'race day', ids: file['race-days']?.map((d) => d.date) ?? [] },
    { path: 'climate', what: 'month', ids: file.climate?.map((m) => `${m.month}`) ?? [] },
  ]
  return lists.flatMap(({ path, what, ids }) =>
    ids.flatMap((id, i) =>
      ids.indexOf(id) === i
        ? []
        : [
            tree.problem(
              tree.placeOf([path, i]),
              'ref/duplicate-id',
              `${what} "${id}" stands here twice`,
              { hint: `the first is entry ${ids.indexOf(id) + 1} of the list` },
            ),
          ],
    ),
  )
}

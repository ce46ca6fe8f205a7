import type { Problem } from '../../model/problem.ts'
import type { ParsedFacility } from './parsed-facility.ts'

/** Nothing stands in its list twice: no machine, race day, month, contact, place or measurement. */
export function checkDuplicates({ file, tree }: ParsedFacility): Problem[] {
  const lists = [
    { path: 'equipment', what: 'machine', ids: file.equipment?.map((m) => m.id) ?? [] },
    { path: 'race-days', what: 'race day', ids: file['race-days']?.map((d) => d.date) ?? [] },
    { path: 'climate', what: 'month', ids: file.climate?.map((m) => `${m.month}`) ?? [] },
    {
      path: 'contacts',
      what: 'contact',
      ids: file.contacts?.map((c) => `${c.role}, ${c.phone}`) ?? [],
    },
    {
      path: 'measurements',
      what: 'measurement',
      ids: file.measurements?.map((m) => `${m.of}, ${m.date}`) ?? [],
    },
    { path: 'surveys', what: 'survey', ids: file.surveys?.map((s) => s.file) ?? [] },
    { path: 'oval.marks', what: 'mark', ids: file.oval.marks?.map((m) => m.name) ?? [] },
    {
      path: 'cushion.sieve',
      what: 'sieve analysis',
      ids: file.cushion.sieve?.map((s) => s.date) ?? [],
    },
    {
      path: 'base.density',
      what: 'density test',
      ids: file.base?.density?.map((d) => `${d.date}, ${d.station?.si ?? ''} m`) ?? [],
    },
  ]
  return lists.flatMap(({ path, what, ids }) =>
    ids.flatMap((id, i) =>
      ids.indexOf(id) === i
        ? []
        : [
            tree.problem(
              tree.placeOf([...path.split('.'), i]),
              'ref/duplicate-id',
              `${what} "${id}" stands here twice`,
              {
                hint: `the first is entry ${ids.indexOf(id) + 1} of the list; correct one of the two, or delete it`,
              },
            ),
          ],
    ),
  )
}

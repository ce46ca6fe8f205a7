import type { Problem } from '../../model/problem.ts'
import type { Path } from '../../read/read-yaml.ts'
import type { Facility } from '../../validate/check-facility.ts'
import type { Engine } from '../engine/engine.ts'

const isQuantity = (x: unknown): x is { readonly si: number } =>
  typeof x === 'object' && x !== null && 'si' in x && typeof x.si === 'number'

/** Everything that a facility file places along the rail, m. */
function placed({ file }: Facility): { readonly path: Path; readonly si: number }[] {
  const lists = [
    { path: ['oval', 'marks'], items: file.oval.marks ?? [] },
    { path: ['base', 'density'], items: file.base?.density ?? [] },
  ]
  return lists.flatMap(({ path, items }) =>
    items.flatMap(({ station }: { readonly station?: unknown }, i) =>
      isQuantity(station) ? [{ path: [...path, i, 'station'], si: station.si }] : [],
    ),
  )
}

/** Stations of the facility file beyond the end of the rail. */
export function stationProblems(facility: Facility, engine: Engine): Problem[] {
  const rail = engine.si('rail.length')
  const length = engine.text('rail.length')
  if (rail === undefined) return []
  const { tree } = facility
  return placed(facility).flatMap(({ path, si }) =>
    si <= rail + 1e-6
      ? []
      : [
          tree.problem(
            tree.placeOf(path),
            'quantity/range',
            `this station lies beyond the end of the rail, which is ${length} long`,
            {
              hint: 'stations are counted once around the rail, from the start of the home straight',
            },
          ),
        ],
  )
}

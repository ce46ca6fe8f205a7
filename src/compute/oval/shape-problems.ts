import type { Problem } from '../../model/problem.ts'
import type { Facility } from '../../validate/check-facility.ts'
import type { Engine } from '../engine/engine.ts'

const dimensions = ['oval.lap', 'oval.straight', 'oval.radius'] as const

/**
 * An oval that cannot exist because of what was measured on it; what its file states by itself has
 * been checked before.
 */
export function shapeProblems({ tree }: Facility, engine: Engine): Problem[] {
  const shape = (['shape.lap', 'shape.straight', 'shape.radius'] as const).map(
    (id) => engine.figure(id)?.value,
  )
  const refused = shape.find((value) => value && !value.ok)
  if (!refused || refused.ok) return []
  const measured = dimensions
    .map((path) => engine.facts.get(path)?.provenance)
    .find((p) => p?.kind === 'measured')
  return [
    tree.problem(
      measured?.kind === 'measured' ? measured.at : tree.keyPlaceOf(['oval']),
      'oval/impossible',
      `no oval has this shape: ${refused.reason}`,
      { hint: 'measure again, or correct what the file states of the oval' },
    ),
  ]
}
